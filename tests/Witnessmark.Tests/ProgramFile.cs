namespace Witnessmark.Tests;

/// <summary>
/// The program that tests start in a process of its own: the published one where there is one, as <c>./test</c> makes it, for it is what is shipped and
/// starts in half the time; else the one built beside the tests.
/// </summary>
internal static class ProgramFile
{
    public static string Path { get; } =
        System.IO.Path.Combine(
            Environment.GetEnvironmentVariable("WITNESSMARK_PUBLISHED") ?? AppContext.BaseDirectory,
            "witnessmark.dll"
        );
}
