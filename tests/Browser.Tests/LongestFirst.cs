using Xunit.Sdk;
using Xunit.v3;

namespace Witnessmark.Browser.Tests;

/// <summary>Begins with the two walks through all screens: last, they would run while nothing is left to run beside them.</summary>
public sealed class LongestFirst : ITestCollectionOrderer
{
    private static readonly string[] Walks =
    [
        typeof(ReadableByAllTests).FullName!,
        typeof(PseudoLanguageTests).FullName!,
    ];

    /// <inheritdoc />
    public IReadOnlyCollection<TTestCollection> OrderTestCollections<TTestCollection>(
        IReadOnlyCollection<TTestCollection> testCollections
    )
        where TTestCollection : ITestCollection =>
        [
            .. testCollections.OrderBy(c =>
                !Walks.Any(w => c.TestCollectionDisplayName.Contains(w, StringComparison.Ordinal))
            ),
        ];
}
