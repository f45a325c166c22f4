using Microsoft.JSInterop;
using Witnessmark.Client.Device;
using Witnessmark.Client.Languages;

namespace Witnessmark.Client.Settings;

/// <summary>The settings of whoever works with this device now, kept in its store and drawn at once.</summary>
internal sealed class SettingsAtHand(DeviceStore store, DeviceLedger ledger, Tongues tongues, IJSRuntime js)
{
    private int chosen;
    private string? readFor;

    /// <summary>Somebody chose otherwise, or somebody else works here now.</summary>
    public event Action? Changed;

    public PersonSettings Now { get; private set; } = new();

    /// <summary>Whether the language that was chosen could not be fetched, so that another one is spoken.</summary>
    public bool LacksLanguage { get; private set; }

    public async Task Open()
    {
        await Read();
        ledger.Elsewhere += () => _ = Read(); // another tab of this one
        ledger.Noted += ReadOfAnother;
    }

    public async Task Choose(PersonSettings wanted)
    {
        chosen++;
        await Draw(wanted);
        if (ledger.Facts.Person is { } person)
            await store.SaveSettings(person, wanted.Write());
    }

    private void ReadOfAnother()
    {
        if (readFor != ledger.Facts.Person)
            _ = Read();
    }

    private async Task Read()
    {
        var (before, person) = (chosen, ledger.Facts.Person);
        readFor = person;
        var kept = person is null ? Nobody : PersonSettings.Read(await store.Settings(person));
        // what was chosen while the store was read is newer than what it held
        if (before == chosen && person == ledger.Facts.Person)
            await Draw(kept);
    }

    // who stands at the door reads what was read here last
    private PersonSettings Nobody => new() { Language = ((IJSInProcessRuntime)js).Invoke<string?>("look.language") };

    private async Task Draw(PersonSettings settings)
    {
        var same = settings == Now && !LacksLanguage;
        Now = settings;
        var tongue = await tongues.Of(settings.Language ?? Tongue.English.Code);
        if (settings != Now)
            return; // chosen otherwise while the language was fetched
        LacksLanguage = tongue is null;
        Spoken.OwnTongue = (tongue ?? Tongue.English).With(settings.Units);
        ((IJSInProcessRuntime)js).InvokeVoid(
            "look.put",
            Name(settings.Scheme),
            Name(settings.Contrast),
            Name(settings.Text),
            Name(settings.Hand),
            Spoken.OwnTongue.Code
        );
        if (!same)
            Changed?.Invoke();
    }

    private static string Name<T>(T choice)
        where T : struct, Enum => choice.ToString().ToLowerInvariant();
}
