using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Microsoft.JSInterop;
using Witnessmark.Bench.Record;

namespace Witnessmark.Client.Device;

/// <summary>The browser's own store (IndexedDB), its locks and its news between tabs.</summary>
internal sealed class DeviceStore(IJSRuntime js) : IDisposable
{
    private IJSInProcessObjectReference? module;
    private DotNetObjectReference<DeviceStore>? self;

    /// <summary>Another tab holds the store in an older form: opening goes on when that tab is closed.</summary>
    public event Action? Waits;

    private IJSInProcessObjectReference Module =>
        module ?? throw new InvalidOperationException("The store is used before it was opened.");

    public async Task Open()
    {
        module = await js.InvokeAsync<IJSInProcessObjectReference>("import", "./device.js");
        self = DotNetObjectReference.Create(this);
        await module.InvokeVoidAsync("open", self);
    }

    [JSInvokable]
    public void Blocked() => Waits?.Invoke();

    /// <summary>A newer version of the program took the store over in another tab: nothing is read or written here any more.</summary>
    public bool IsSuperseded => Module.Invoke<bool>("superseded");

    public void Dispose() => self?.Dispose();

    public async Task<DeviceFacts> Facts() =>
        Read(await Module.InvokeAsync<string>("facts"), DeviceJson.Default.DeviceFacts);

    /// <summary>All entries, or those with the ids.</summary>
    public async Task<IReadOnlyList<Entry>> Entries(string[]? ids = null) =>
        [.. (await Module.InvokeAsync<string[]>("entries", [ids])).Select(EntryOf)];

    /// <summary>Writes number and fact in one; null when done, else the head that another tab left meanwhile.</summary>
    /// <exception cref="NoRoom">The browser gives no more room; nothing was written.</exception>
    /// <exception cref="Superseded">The store is another tab's now; nothing was written.</exception>
    public async Task<Head?> Append(Entry entry)
    {
        var answer = await Module.InvokeAsync<string>(
            "append",
            entry.Id,
            EntryJson.Text(entry),
            entry.Seq,
            entry.DevicePrevious,
            entry.Hash
        );
        return answer.Length == 0 ? null
            : answer == "full" ? throw new NoRoom()
            : answer == "superseded" ? throw new Superseded()
            : Read(answer, DeviceJson.Default.Head);
    }

    /// <summary>Keeps entries that the shop gave, and how far it was read.</summary>
    public async Task Keep(IReadOnlyList<Entry> entries, string ledger, int pulled) =>
        await Module.InvokeVoidAsync(
            "keep",
            entries.Select(e => e.Id).ToArray(),
            entries.Select(EntryJson.Text).ToArray(),
            ledger,
            pulled
        );

    public async Task Remember(params (string Name, object? Value)[] facts) =>
        await Module.InvokeVoidAsync(
            "remember",
            facts.Select(f => f.Name).ToArray(),
            facts.Select(f => f.Value).ToArray()
        );

    public void Listen<T>(DotNetObjectReference<T> listener)
        where T : class => Module.InvokeVoid("listen", listener);

    /// <summary>Calls <c>HeadIs</c> of the listener whenever something came in at the shop; does nothing while that is so already.</summary>
    public void HearNews<T>(DotNetObjectReference<T> listener)
        where T : class => Module.InvokeVoid("hearNews", listener);

    public async Task<bool> Alone<T>(DotNetObjectReference<T> listener, string method)
        where T : class => await Module.InvokeAsync<bool>("alone", listener, method);

    /// <summary>Lets a newer version of the program take over that waits for it.</summary>
    public async Task LetNewerTakeOver() => await Module.InvokeVoidAsync("letNewerTakeOver");

    public async Task AskToKeep() => await Module.InvokeAsync<bool>("persist");

    public async Task<StoreSpace> Space() =>
        Read(await Module.InvokeAsync<string>("space"), DeviceJson.Default.StoreSpace);

    public string? Draft(string key) => Module.Invoke<string?>("draft", key);

    public void SaveDraft(string key, string? text) => Module.InvokeVoid("saveDraft", key, text);

    /// <summary>Sends the keyboard's keys to <c>Typed</c> of the listener; the answer ends it.</summary>
    public int Type<T>(DotNetObjectReference<T> typist)
        where T : class => Module.Invoke<int>("type", typist);

    public void StopTyping(int turn) => Module.InvokeVoid("stopTyping", turn);

    /// <summary>Waits until what was drawn has come onto the screen; where nobody looks not for long.</summary>
    public async Task Painted() => await Module.InvokeVoidAsync("painted");

    public void Focus(string selector) => Module.InvokeVoid("focus", selector);

    /// <summary>The timers that are kept: id and text.</summary>
    public async Task<string[][]> Timers() => await Module.InvokeAsync<string[][]>("timers");

    /// <summary>Keeps a timer, or forgets it when <paramref name="text"/> is null.</summary>
    public async Task SaveTimer(string id, string? text) => await Module.InvokeVoidAsync("saveTimer", id, text);

    /// <summary>What is kept of a person's settings; null when that person chose nothing yet.</summary>
    public async Task<string?> Settings(string person) => await Module.InvokeAsync<string?>("settings", person);

    public async Task SaveSettings(string person, string text) =>
        await Module.InvokeVoidAsync("saveSettings", person, text);

    /// <summary>Forgets everything, takes a new name for this device, and knows who goes on with it, and how they want it.</summary>
    public async Task Forget(string person, string settings) =>
        await Module.InvokeVoidAsync("forget", person, settings);

    public void TopOfPage() => Module.InvokeVoid("topOfPage");

    /// <summary>Whether the page was out of sight since this was asked last.</summary>
    public bool Dark() => Module.Invoke<bool>("dark");

    /// <summary>Puts words before the page's title; empty takes them away.</summary>
    public void Attention(string words) => Module.InvokeVoid("attention", words);

    public void Vibrate() => Module.InvokeVoid("vibrate");

    /// <summary>A browser lets sound begin in a tap only: asked for here, it may come later by itself.</summary>
    public void ReadySound(bool wanted) => Module.InvokeVoid("readySound", wanted);

    public void Beep() => Module.InvokeVoid("beep");

    public void ToTop(string selector) => Module.InvokeVoid("toTop", selector);

    private static Entry EntryOf(string text)
    {
        using var document = JsonDocument.Parse(text);
        return EntryJson.Read(document.RootElement);
    }

    private static T Read<T>(string text, JsonTypeInfo<T> type) =>
        JsonSerializer.Deserialize(text, type) ?? throw new JsonException("The store answered nothing.");
}
