using System.Text.Json;
using Witnessmark.Bench.Record;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Groups;

/// <summary>
/// Many devices that never stop: each has a chain, sends the next few of it, remembers what was acknowledged and, when it does not know, sends again.
/// </summary>
internal sealed class GroupLoad : IDisposable
{
    private readonly CancellationTokenSource end = new();
    private readonly Sender[] senders;
    private readonly Task sending;

    public GroupLoad(Balancer balancer, int devices, int seed)
    {
        senders = [.. Enumerable.Range(1, devices).Select(n => new Sender($"bench-{n}", new(seed + n)))];
        sending = Task.WhenAll(senders.Select(s => Task.Run(() => s.Send(balancer, end.Token))));
    }

    public int Acknowledged => senders.Sum(s => s.Acknowledged);

    /// <summary>Requests without a yes.</summary>
    public int Unanswered => senders.Sum(s => s.Unanswered);

    /// <summary>Until every device was acknowledged something that it sends from now on.</summary>
    public void UntilAllGotOn()
    {
        var before = senders.Select(s => s.Acknowledged).ToArray();
        Postgres.Until(() => sending.IsFaulted || senders.Zip(before).All(s => s.First.Acknowledged > s.Second));
        if (sending.IsFaulted)
            sending.GetAwaiter().GetResult();
    }

    /// <summary>Sends nothing more.</summary>
    public async Task Stop()
    {
        await end.CancelAsync();
        await sending;
    }

    /// <summary>What is not as it was promised, given all ids in the shop's order.</summary>
    public IReadOnlyList<string> Faults(IReadOnlyList<string> ids)
    {
        List<string> faults =
        [
            .. senders.SelectMany(s => s.TakenBack),
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

    public void Dispose() => end.Dispose();

    private sealed class Sender(string device, Random chance)
    {
        private const int MostInBatch = 8;
        private readonly List<Entry> chain = [];

        public string Device => device;
        public int Acknowledged { get; private set; }
        public int Unanswered { get; private set; }
        public List<string> TakenBack { get; } = [];

        public async Task Send(Balancer balancer, CancellationToken end)
        {
            while (!end.IsCancellationRequested)
                if (await balancer.Post(device, Next(chance.Next(1, MostInBatch + 1))) is { } said)
                    Note(said);
                else
                {
                    Unanswered++;
                    await Task.Delay(chance.Next(20, 200), CancellationToken.None);
                }
        }

        private void Note(string said)
        {
            using var json = JsonDocument.Parse(said);
            var upTo = json.RootElement.GetProperty("upTo").GetInt32();
            if (upTo < Acknowledged)
                TakenBack.Add($"{device}: {Acknowledged} were acknowledged, and then {upTo}.");
            else
                Acknowledged = upTo;
        }

        private IEnumerable<Entry> Next(int count)
        {
            while (chain.Count < Acknowledged + count)
                chain.Add(Notes.Next(device, chain.Count + 1, chain.LastOrDefault()?.Hash));
            return chain.Skip(Acknowledged).Take(count).ToArray();
        }
    }
}
