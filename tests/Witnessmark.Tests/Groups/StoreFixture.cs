namespace Witnessmark.Tests.Groups;

/// <summary>One PostgreSQL for all who do not kill it.</summary>
public sealed class StoreFixture : IDisposable
{
    internal Postgres Store { get; } = Postgres.Started();

    public void Dispose() => Store.Dispose();
}

[CollectionDefinition(Name)]
public sealed class StoreCollection : ICollectionFixture<StoreFixture>
{
    public const string Name = "store of a group";
}
