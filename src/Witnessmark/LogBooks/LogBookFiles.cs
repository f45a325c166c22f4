using System.Text;

namespace Witnessmark.LogBooks;

/// <summary>Log books as files, one for each machine, in <c>log-books/</c> of a data folder.</summary>
internal sealed class LogBookFiles(string data)
{
    /// <summary>Name of the folder.</summary>
    public const string Folder = "log-books";

    private readonly Lock keeping = new();

    /// <summary>What is kept under a name, or null.</summary>
    public string? Find(string name) => File.Exists(PathOf(name)) ? File.ReadAllText(PathOf(name)) : null;

    /// <summary>Changes what is kept under a name, whole or not at all.</summary>
    public void Change(string name, Func<string?, string> change)
    {
        lock (keeping)
        {
            var text = change(Find(name));
            Directory.CreateDirectory(Path.GetDirectoryName(PathOf(name))!);
            var half = PathOf(name) + ".new";
            using (var file = new FileStream(half, FileMode.Create, FileAccess.Write))
            {
                file.Write(Encoding.UTF8.GetBytes(text));
                file.Flush(flushToDisk: true);
            }
            File.Move(half, PathOf(name), overwrite: true);
        }
    }

    private string PathOf(string name) => Path.Combine(data, Folder, $"{name}.json");
}
