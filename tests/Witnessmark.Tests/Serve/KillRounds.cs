using System.Diagnostics;
using System.Text.Json;
using Microsoft.Data.Sqlite;
using Witnessmark.Bench.Record;
using Witnessmark.Ledger.Sqlite;

namespace Witnessmark.Tests.Serve;

/// <summary>
/// A server under load from many devices is killed again and again. Each device has a chain that never ends, sends the next few of
/// it, remembers what was acknowledged and, when it does not know, sends again.
/// </summary>
internal sealed class KillRounds(string folder, int devices, int seed)
{
    private const int MostInBatch = 8;
    private const int LongestLife = 250; // ms under load; what is written in it is many times what a kill can cut
    private readonly Random chance = new(seed);
    private readonly Sender[] senders = [.. Enumerable.Range(1, devices).Select(n => new Sender($"bench-{n}"))];

    private readonly List<TimeSpan> starts = [];
    private readonly List<string> ids = [];

    /// <summary>How long it took to answer again, sorted.</summary>
    public IReadOnlyList<TimeSpan> Starts => [.. starts.Order()];

    /// <summary>Entries of which the shop said that it has them.</summary>
    public int Acknowledged => senders.Sum(s => s.Acknowledged);

    /// <summary>Kills that fell into requests on their way.</summary>
    public int CutRequests { get; private set; }

    /// <summary>One life of the server; the faults that the next one would find.</summary>
    public async Task<IReadOnlyList<string>> Round()
    {
        var watch = Stopwatch.StartNew();
        using (var shop = RunningShop.Serve(folder))
        {
            await shop.Get("/api/entries?after=0");
            starts.Add(watch.Elapsed);
            var sending = senders.Select(s => s.SendUntilItDies(shop, chance.Next())).ToList();
            await Task.WhenAll(senders.Select(s => s.FirstAnswer)); // before that it only warms up
            await Task.Delay(chance.Next(LongestLife));
            shop.Kill();
            CutRequests += (await Task.WhenAll(sending)).Count(cut => cut);
        }
        Read(ids); // only what came in this time: reading all of it each time would take longer than the rounds
        return Faults();
    }

    /// <summary>Whether all that was read round by round is there still, as it was.</summary>
    public bool IsAllAsItWas()
    {
        List<string> all = [];
        Read(all);
        return all.SequenceEqual(ids);
    }

    private void Read(List<string> to)
    {
        using var ledger = SqliteLedger.Open(folder, TimeProvider.System);
        while (ledger.After(to.Count) is { Entries: { Count: > 0 } entries })
            to.AddRange(entries.Select(e => e.Entry.Id));
        SqliteConnection.ClearAllPools();
    }

    private List<string> Faults()
    {
        List<string> faults =
        [
            .. ids.GroupBy(i => i).Where(g => g.Count() > 1).Select(g => $"{g.Key} is there {g.Count()} times."),
        ];
        foreach (var sender in senders)
        {
            string[] own = [.. ids.Where(i => i.StartsWith($"{sender.Device}-", StringComparison.Ordinal))];
            if (!own.SequenceEqual(Enumerable.Range(1, own.Length).Select(seq => $"{sender.Device}-{seq}")))
                faults.Add($"{sender.Device}: not in order without a gap.");
            if (own.Length < sender.Acknowledged)
                faults.Add($"{sender.Device}: {sender.Acknowledged} were acknowledged, {own.Length} are there.");
        }
        return faults;
    }

    private sealed class Sender(string device)
    {
        private readonly List<Entry> chain = [];
        private TaskCompletionSource answered = new();

        public string Device => device;

        public int Acknowledged { get; private set; }

        /// <summary>The first answer of this life of the server, or its end.</summary>
        public Task FirstAnswer => answered.Task;

        /// <summary>Whether a request was on its way when the server died.</summary>
        public async Task<bool> SendUntilItDies(RunningShop shop, int seed)
        {
            var chance = new Random(seed);
            answered = new();
            try
            {
                while (true)
                {
                    using var answer = await shop.PostAs(device, Next(chance.Next(1, MostInBatch + 1)));
                    var said = await answer.Content.ReadAsStringAsync();
                    Assert.True(answer.IsSuccessStatusCode, said);
                    using var json = JsonDocument.Parse(said);
                    Acknowledged = json.RootElement.GetProperty("upTo").GetInt32();
                    answered.TrySetResult();
                }
            }
            catch (Exception gone) when (gone is HttpRequestException or IOException)
            {
                return true;
            }
            finally
            {
                answered.TrySetResult();
            }
        }

        private IEnumerable<Entry> Next(int count)
        {
            while (chain.Count < Acknowledged + count)
                chain.Add(Notes.Next(device, chain.Count + 1, chain.LastOrDefault()?.Hash));
            return chain.Skip(Acknowledged).Take(count);
        }
    }
}
