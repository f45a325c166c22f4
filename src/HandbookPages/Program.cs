using Witnessmark.HandbookPages;

// FROM TO: every page of one folder into the other; run by the build of the client
if (args is not [var from, var to])
{
    Console.Error.WriteLine("two folders are needed: where the pages are written, and where they go");
    return 2;
}
Directory.CreateDirectory(to);
foreach (var page in Directory.EnumerateFiles(from, "*.md"))
    File.WriteAllText(
        Path.Combine(to, Path.GetFileNameWithoutExtension(page) + ".html"),
        PageFragment.Of(File.ReadAllText(page))
    );
return 0;
