using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.Wording;

/// <summary>What an entry is, in a word or two, where what it says is not understood.</summary>
public static class EntryKindWords
{
    /// <summary>A kind by the word that stands in the entry; one that this program does not know is an entry.</summary>
    public static Sentence Of(string kind) =>
        kind switch
        {
            EntryKind.Arrival => $"an arrival",
            EntryKind.Reading => $"a reading",
            EntryKind.SecondReading => $"a second reading",
            EntryKind.Correction => $"a correction",
            EntryKind.Mark => $"a mark",
            EntryKind.Left => $"a point left as it is",
            EntryKind.Note => $"a note",
            EntryKind.Strike => $"an entry taken back",
            EntryKind.Campaign => $"a word on a campaign",
            EntryKind.CampaignLeft => $"a campaign left open",
            EntryKind.Figure => $"a given figure",
            EntryKind.Vouch => $"a vouching",
            EntryKind.Photograph => $"a photograph",
            EntryKind.Planned => $"a point taken into the plan",
            EntryKind.Dropped => $"a point dropped from the plan",
            EntryKind.Finding => $"a finding",
            EntryKind.Estimate => $"what a finding costs",
            EntryKind.Decision => $"the owner's word on a finding",
            EntryKind.PutRight => $"a finding put right",
            EntryKind.Release => $"a release",
            EntryKind.Promise => $"a promise",
            EntryKind.Parts => $"when parts arrive",
            EntryKind.Placed => $"a place in the day plan",
            _ => $"an entry",
        };
}
