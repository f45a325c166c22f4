namespace Witnessmark.Tests.Serve;

/// <summary>A folder that goes away with the test.</summary>
internal sealed class TempFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("witnessmark-serve-").FullName;

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
