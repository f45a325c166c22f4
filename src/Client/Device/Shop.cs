using System.Buffers;
using System.Net;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Witnessmark.Bench.Photographs;
using Witnessmark.Bench.Record;
using Witnessmark.Client.Doors;

namespace Witnessmark.Client.Device;

/// <summary>Why the shop did not take or give anything. Nothing is lost by it.</summary>
internal sealed class ShopTrouble(string says, HttpStatusCode? status = null) : Exception(says)
{
    public HttpStatusCode? Status => status;
}

/// <summary>The shop over HTTP, protocol 1.</summary>
internal sealed partial class Shop(ShopLine line)
{
    private const int Protocol = 1;

    /// <summary>The shop's files as the reply stood, once it was seen to be one, with what the shop calls them; null when they still are what it called so.</summary>
    public async Task<(string Text, string? Tag)?> Workbench(string? known)
    {
        var answer = await Answer(line.Get("api/workbench", known));
        if (answer.Status == HttpStatusCode.NotModified && known is not null)
            return null;
        var text = Text(answer);
        var reply = Read(text, DeviceJson.Default.WorkbenchReply);
        return reply.Protocol == Protocol
            ? (text, answer.Tag)
            : throw new ShopTrouble(DeviceWords.OtherProtocol(reply.Protocol));
    }

    public async Task<TakenReply> Send(string device, IReadOnlyList<Entry> entries) =>
        Read(await Text(line.Post("api/entries", Batch(device, entries))), DeviceJson.Default.TakenReply);

    /// <summary>Sets a figure; null when the shop kept it, else its no.</summary>
    /// <exception cref="SecretWanted">A lead shows the passphrase once more before.</exception>
    public async Task<string?> SetFigure(string sheet, string key, FigureRequest figure)
    {
        var answer = await Answer(
            line.Put(
                $"api/sheets/{Uri.EscapeDataString(sheet)}/figures/{Uri.EscapeDataString(key)}",
                figure,
                DeviceJson.Default.FigureRequest
            )
        );
        Wanted(answer);
        return answer.IsSuccess ? null
            : answer.Status is HttpStatusCode.Conflict or HttpStatusCode.BadRequest
                ? Read(answer.Text, DeviceJson.Default.RefusedReply).Error
            : throw Refused(answer);
    }

    /// <summary>Brings a photograph; null when the shop has it, else its no.</summary>
    public async Task<string?> Send(string sha256, byte[] picture)
    {
        var answer = await Answer(line.Put($"api/photographs/{sha256}", picture, Picture.MediaType));
        return answer.IsSuccess ? null : DeviceWords.Refused((int)answer.Status);
    }

    /// <summary>Entries after a place in the shop's order.</summary>
    public async Task<EntriesReply> After(int order)
    {
        var text = await Text(line.Get($"api/entries?after={order}"));
        try
        {
            using var document = JsonDocument.Parse(text);
            var root = document.RootElement;
            return new(
                root.GetProperty("ledger").GetString()!,
                root.GetProperty("head").GetInt32(),
                [
                    .. root.GetProperty("entries")
                        .EnumerateArray()
                        .Select(e => (e.GetProperty("order").GetInt32(), EntryJson.Read(e.GetProperty("entry")))),
                ],
                // an older server of the shop says nothing of it
                root.TryGetProperty("notCounting", out var ids)
                    ? [.. ids.EnumerateArray().Select(id => id.GetString()!)]
                    : []
            );
        }
        catch (Exception unread)
            when (unread is JsonException or KeyNotFoundException or InvalidOperationException or MalformedEntry)
        {
            throw new ShopTrouble(DeviceWords.Unread);
        }
    }

    /// <summary>The day plan as the reply stood.</summary>
    public async Task<string> Day()
    {
        var answer = await Answer(line.Get($"api/day?language={OwnTongue.Code}"));
        return answer is { IsSuccess: true, IsJson: true } ? answer.Text
            : answer.Status is HttpStatusCode.Conflict or HttpStatusCode.ServiceUnavailable
                ? throw new ShopTrouble(Read(answer.Text, DeviceJson.Default.RefusedReply).Error, answer.Status)
            : throw Refused(answer);
    }

    /// <summary>What the shop's lists say of a machine.</summary>
    public async Task<CampaignsReply> Campaigns(string make, string model, int? year, string vin) =>
        Read(
            await Text(
                line.Get(
                    $"api/campaigns?make={Uri.EscapeDataString(make)}&model={Uri.EscapeDataString(model)}&year={year}&vin={Uri.EscapeDataString(vin)}"
                )
            ),
            DeviceJson.Default.CampaignsReply
        );

    /// <summary>Machines of the register with a text in them; three letters or digits at least.</summary>
    public async Task<FoundReply> Find(string text, CancellationToken cancel) =>
        Read(
            await Text(line.Get($"api/machines?find={Uri.EscapeDataString(text)}", cancel: cancel)),
            DeviceJson.Default.FoundReply
        );

    /// <summary>A machine of the register; null when it has none of that id.</summary>
    public async Task<MachineReply?> Machine(string id)
    {
        try
        {
            return Read(
                await Text(line.Get($"api/machines/{Uri.EscapeDataString(id)}")),
                DeviceJson.Default.MachineReply
            );
        }
        catch (ShopTrouble trouble) when (trouble.Status == HttpStatusCode.NotFound)
        {
            return null;
        }
    }

    /// <summary>How fast a point wears on other machines of the same figure sheet.</summary>
    public async Task<FleetReply> Fleet(string id, string point) =>
        Read(
            await Text(line.Get($"api/machines/{Uri.EscapeDataString(id)}/points/{point}/fleet")),
            DeviceJson.Default.FleetReply
        );

    /// <summary>Takes away who brings a machine.</summary>
    /// <exception cref="SecretWanted">A lead shows the passphrase once more before.</exception>
    public async Task ForgetOwner(string id) =>
        await Text(line.Delete($"api/machines/{Uri.EscapeDataString(id)}/owner"));

    private static byte[] Batch(string device, IReadOnlyList<Entry> entries)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using var json = new Utf8JsonWriter(buffer);
        json.WriteStartObject();
        json.WriteNumber("protocol", Protocol);
        json.WriteString("device", device);
        json.WriteNumber("epoch", entries[0].Epoch);
        json.WriteStartArray("entries");
        foreach (var entry in entries)
            EntryJson.Write(json, entry);
        json.WriteEndArray();
        json.WriteEndObject();
        json.Flush();
        return buffer.WrittenSpan.ToArray();
    }

    private static T Read<T>(string text, JsonTypeInfo<T> type)
    {
        try
        {
            return JsonSerializer.Deserialize(text, type) ?? throw new JsonException("null");
        }
        catch (JsonException)
        {
            throw new ShopTrouble(DeviceWords.Unread);
        }
    }

    /// <exception cref="SecretWanted">The shop wants to be shown once more who somebody is.</exception>
    private static void Wanted(ShopAnswer answer)
    {
        if (answer.Status == HttpStatusCode.PreconditionRequired)
            throw new SecretWanted();
    }

    private static async Task<string> Text(Task<ShopAnswer> asked) => Text(await Answer(asked));

    private static string Text(ShopAnswer answer)
    {
        Wanted(answer);
        return !answer.IsSuccess ? throw Refused(answer)
            : answer.IsJson ? answer.Text
            : throw new ShopTrouble(DeviceWords.NoShop);
    }

    private static ShopTrouble Refused(ShopAnswer answer) =>
        new(DeviceWords.Refused((int)answer.Status), answer.Status);

    private static async Task<ShopAnswer> Answer(Task<ShopAnswer> asked)
    {
        try
        {
            return await asked;
        }
        catch (NoAnswer)
        {
            throw new ShopTrouble(DeviceWords.NoAnswer);
        }
    }
}
