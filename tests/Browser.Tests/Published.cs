using System.Diagnostics;

[assembly: AssemblyFixture(typeof(Witnessmark.Browser.Tests.Published))]
[assembly: AssemblyFixture(typeof(Witnessmark.Browser.Tests.Chromium))]
// each test has a shop, a browser and a store of its own, and waits for them most of the time
[assembly: CollectionBehavior(CollectionBehavior.CollectionPerClass)]
[assembly: TestCollectionOrderer(typeof(Witnessmark.Browser.Tests.LongestFirst))]
[assembly: Xunit.v3.Parallelization(MaxThreads = 2)]

namespace Witnessmark.Browser.Tests;

/// <summary>The published program: what people get, not what a development server makes of it.</summary>
/// <remarks>Taken from the folder in <c>WITNESSMARK_PUBLISHED</c>, or published once into a folder of its own.</remarks>
public sealed class Published : IAsyncLifetime
{
    private string? own;

    /// <summary>The folder with the program.</summary>
    public string Folder { get; private set; } = "";

    /// <summary>The root of the repository.</summary>
    public static string Root { get; } = FindRoot(AppContext.BaseDirectory);

    public async ValueTask InitializeAsync()
    {
        if (Environment.GetEnvironmentVariable("WITNESSMARK_PUBLISHED") is { Length: > 0 } given)
        {
            Folder = given;
            return;
        }
        Folder = own = Directory.CreateTempSubdirectory("witnessmark-published-").FullName;
        var project = Path.Combine(Root, "src", "Witnessmark");
        using var publish = Process.Start(
            new ProcessStartInfo("dotnet", ["publish", project, "-c", "Release", "-o", own])
        )!;
        await publish.WaitForExitAsync();
        if (publish.ExitCode != 0)
            throw new InvalidOperationException($"dotnet publish ended with {publish.ExitCode}.");
    }

    public ValueTask DisposeAsync()
    {
        if (own is not null)
            Directory.Delete(own, recursive: true);
        return ValueTask.CompletedTask;
    }

    private static string FindRoot(string from) =>
        File.Exists(Path.Combine(from, "Witnessmark.slnx"))
            ? from
            : FindRoot(
                Path.GetDirectoryName(Path.TrimEndingDirectorySeparator(from))
                    ?? throw new InvalidOperationException("Witnessmark.slnx stands in no folder above.")
            );
}
