using System.Diagnostics;
using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>One device: a browser profile that is thrown away afterwards.</summary>
public sealed class BrowserDevice(IBrowserContext context, string profile) : IAsyncDisposable
{
    private bool isLeft;

    public IBrowserContext Context => context;

    public async Task<BenchHand> Open(RunningShop shop)
    {
        var page = context.Pages.Count > 0 ? context.Pages[0] : await context.NewPageAsync();
        return await new BenchHand(page, shop.Address).Start();
    }

    /// <summary>Ends the browser and leaves what it keeps, for whoever opens the profile again.</summary>
    public async Task<string> Close()
    {
        isLeft = true;
        await context.CloseAsync();
        return profile;
    }

    /// <summary>Ends the browser's processes as a dead battery would (SIGKILL), and leaves what it keeps as <see cref="Close"/> does.</summary>
    public async Task<string> Kill()
    {
        isLeft = true;
        var closed = new TaskCompletionSource();
        context.Close += (_, _) => closed.TrySetResult();
        foreach (var process in Process.GetProcesses().Where(IsOfProfile))
            process.Kill(entireProcessTree: true);
        await closed.Task.WaitAsync(TimeSpan.FromSeconds(30));
        return profile;
    }

    /// <summary>What a closed device keeps, once more.</summary>
    public static string Copy(string profile)
    {
        var copy = Directory.CreateTempSubdirectory("witnessmark-device-").FullName;
        foreach (var folder in Directory.GetDirectories(profile, "*", SearchOption.AllDirectories))
            Directory.CreateDirectory(folder.Replace(profile, copy, StringComparison.Ordinal));
        foreach (var file in Directory.GetFiles(profile, "*", SearchOption.AllDirectories))
            File.Copy(file, file.Replace(profile, copy, StringComparison.Ordinal));
        return copy;
    }

    public async ValueTask DisposeAsync()
    {
        await context.CloseAsync();
        if (!isLeft)
            Directory.Delete(profile, recursive: true);
    }

    // Linux: the words by which a process was started; the profile's name is this test's alone
    private bool IsOfProfile(Process process)
    {
        try
        {
            return File.ReadAllText($"/proc/{process.Id}/cmdline").Contains($"--user-data-dir={profile}\0");
        }
        catch (Exception gone) when (gone is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }
}
