using System.Text.Json;
using Witnessmark.Bench.Record;

namespace Witnessmark.Ledger.Tests;

public sealed class JobsNamingTests : IDisposable
{
    private readonly Shop shop = new();
    private readonly List<Entry> entries = [];

    public void Dispose() => shop.Dispose();

    [Fact]
    public void The_jobs_whose_arrival_names_a_sheet_are_given_whole_and_no_others()
    {
        Arrives("1", "fell-640");
        Arrives("2", "scar-500");
        Reads("1");
        Reads("2");
        Arrives("3", "fell-640");
        Add("4", EntryKind.Note, EntryBody.Note(null, "like the fell-640")); // named, but by no arrival
        shop.Post(entries);
        var jobs = shop.Ledger.OfJobsNaming("fell-640");
        Assert.Equal(["e1 e3", "e5"], jobs.Select(j => string.Join(' ', j.Select(e => e.Id))));
        Assert.Empty(shop.Ledger.OfJobsNaming("fell-641"));
    }

    private void Arrives(string job, string sheet) =>
        Add(job, EntryKind.Arrival, EntryBody.Arrival("m", sheet, 1, "handover", []));

    private void Reads(string job) =>
        Add(job, EntryKind.Reading, EntryBody.Reading("distance", ["1 km"], null, "odometer"));

    private void Add(string job, string kind, JsonElement body)
    {
        var seq = entries.Count + 1;
        var draft = new EntryDraft(
            $"e{seq}",
            "shop",
            job,
            kind,
            body,
            null,
            null,
            "2026-01-01T09:00:00+00:00",
            "Ines Tallow"
        );
        entries.Add(Entries.Sealed(draft, "bench", 1, seq, entries.LastOrDefault()?.Hash));
    }
}
