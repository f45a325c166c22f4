using System.Buffers.Text;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Record;
using Witnessmark.Paper.LogBook;

namespace Witnessmark.Paper.Tests;

public sealed class SignedLogBookTests
{
    private static readonly string Signed = LogBookFile.Write(FullJob.Released, Bench640.Workbench, TestSeals.Harrow);

    [Fact]
    public void A_known_key_makes_it_intact_and_a_stranger_is_named()
    {
        var known = LogBookFile.Verify(Signed, TestSeals.Both);
        Assert.Equal((LogBookWord.Intact, "harrow"), (known.Word, Assert.Single(known.Visits!).KeyName));
        var strange = LogBookFile.Verify(Signed);
        Assert.Equal(LogBookWord.UnknownKey, strange.Word);
        Assert.Contains(TestSeals.Harrow.Key.Id, strange.Says);
        Assert.Equal(LogBookFile.Head(FullJob.Released, Bench640.Workbench), strange.Head);
    }

    [Fact]
    public void No_digit_of_it_can_be_changed_unnoticed()
    {
        for (var i = 0; i < Signed.Length; i++)
            if (char.IsAsciiDigit(Signed[i]))
            {
                var other = $"{Signed[..i]}{(Signed[i] == '9' ? '8' : (char)(Signed[i] + 1))}{Signed[(i + 1)..]}";
                var word = LogBookFile.Verify(other, TestSeals.Both).Word;
                Assert.False(
                    word is LogBookWord.Intact or LogBookWord.UnknownKey,
                    $"{i}: …{Signed[Math.Max(0, i - 20)..i]}|"
                );
            }
    }

    [Fact]
    public void Whoever_changes_it_and_seals_it_again_is_found_by_the_signature()
    {
        var forged = JsonNode.Parse(Signed)!;
        var own = JsonNode.Parse(LogBookFile.Write(Other("413"), Bench640.Workbench, TestSeals.Harrow))!;
        var visit = own["visits"]![0]!.AsObject();
        visit["signature"] = forged["visits"]![0]!["signature"]!.GetValue<string>();
        var finding = LogBookFile.Verify(own.ToJsonString(), TestSeals.Both);
        Assert.Equal(LogBookWord.Changed, finding.Word);
        Assert.Contains("belongs to another record", finding.Says);
    }

    [Fact]
    public void Another_workshop_continues_it_and_both_signatures_stay_checkable()
    {
        var continued = LogBookFile.Write(Other("88"), Bench640.Workbench, TestSeals.Quay, EarlierVisits.In(Signed));
        var finding = LogBookFile.Verify(continued, TestSeals.Both);
        Assert.Equal(LogBookWord.Intact, finding.Word);
        Assert.Equal([("412", "harrow"), ("88", "quay")], finding.Visits!.Select(v => (v.Job!, v.KeyName!)));
        var onlyOne = LogBookFile.Verify(continued, new([(TestSeals.Quay.Key, "quay")]));
        Assert.Equal(LogBookWord.UnknownKey, onlyOne.Word);
    }

    [Fact]
    public void A_visit_that_was_taken_out_is_missed_and_one_put_in_is_found()
    {
        var continued = LogBookFile.Write(Other("88"), Bench640.Workbench, TestSeals.Quay, EarlierVisits.In(Signed));
        var file = JsonNode.Parse(continued)!;
        var first = file["visits"]![0]!.DeepClone();
        file["visits"]!.AsArray().RemoveAt(0);
        var cut = LogBookFile.Verify(file.ToJsonString(), TestSeals.Both);
        Assert.Equal(LogBookWord.Truncated, cut.Word);
        Assert.Contains("1 of 2 visits", cut.Says);
        file["visits"]!.AsArray().Add(first);
        Assert.Equal(LogBookWord.Changed, LogBookFile.Verify(file.ToJsonString(), TestSeals.Both).Word);
    }

    [Fact]
    public void The_signature_of_the_whole_cannot_be_left_out_nor_its_key()
    {
        var file = JsonNode.Parse(Signed)!.AsObject();
        file.Remove("signature");
        Assert.Equal(LogBookWord.Truncated, LogBookFile.Verify(file.ToJsonString(), TestSeals.Both).Word);
        file = JsonNode.Parse(Signed)!.AsObject();
        file["keys"] = new JsonArray();
        Assert.Equal(LogBookWord.Truncated, LogBookFile.Verify(file.ToJsonString(), TestSeals.Both).Word);
    }

    [Fact]
    public void Fields_that_this_program_does_not_know_are_kept_and_bound()
    {
        var foreign = JsonNode.Parse(LogBookFile.Write(FullJob.Released, Bench640.Workbench))!.AsObject();
        foreign["weather"] = "rain";
        var continued = LogBookFile.Write(
            Other("88"),
            Bench640.Workbench,
            TestSeals.Quay,
            EarlierVisits.In(foreign.ToJsonString())
        );
        Assert.Contains("\"weather\":\"rain\"", continued);
        Assert.Equal(LogBookWord.Intact, LogBookFile.Verify(continued, TestSeals.Both).Word);
        var changed = LogBookFile.Verify(continued.Replace("rain", "snow"), TestSeals.Both);
        Assert.Equal(LogBookWord.Changed, changed.Word);
    }

    [Fact]
    public void A_file_of_version_1_is_intact_and_can_be_continued()
    {
        var old = JsonNode.Parse(LogBookFile.Write(FullJob.Released, Bench640.Workbench))!["visits"]![
            0
        ]!.ToJsonString();
        Assert.Equal(LogBookWord.Intact, LogBookFile.Verify(old).Word);
        var continued = LogBookFile.Write(Other("88"), Bench640.Workbench, TestSeals.Quay, EarlierVisits.In(old));
        var finding = LogBookFile.Verify(continued, TestSeals.Both);
        Assert.Equal(LogBookWord.Intact, finding.Word);
        Assert.Equal([null, "quay"], finding.Visits!.Select(v => v.KeyName));
    }

    [Fact]
    public void The_same_visit_is_not_put_in_twice()
    {
        var again = LogBookFile.Write(FullJob.Released, Bench640.Workbench, TestSeals.Harrow, EarlierVisits.In(Signed));
        Assert.Single(LogBookFile.Verify(again, TestSeals.Both).Visits!);
    }

    [Fact]
    public void What_is_written_is_canonical()
    {
        using var document = JsonDocument.Parse(Signed);
        Assert.Equal(Signed, CanonicalJson.Of(document.RootElement));
    }

    [Fact]
    public void A_code_of_this_record_fits_and_any_other_is_told()
    {
        var head = LogBookFile.Head(FullJob.Released, Bench640.Workbench);
        var code = LogBookFile.Signature("412", Bench640.Workbench.Workshop.Id, head, TestSeals.Harrow);
        Assert.Null(PaperCode.Fault(code, Signed));
        var another = LogBookFile.Signature("412", Bench640.Workbench.Workshop.Id, head[1..] + "0", TestSeals.Harrow);
        Assert.Contains("another record", PaperCode.Fault(another, Signed)!.Says);
        var parts = code.Split('.');
        var said = Encoding
            .UTF8.GetString(Base64Url.DecodeFromChars(parts[1]))
            .Replace("\"job\":\"412\"", "\"job\":\"413\"");
        var changed = $"{parts[0]}.{Base64Url.EncodeToString(Encoding.UTF8.GetBytes(said))}.{parts[2]}";
        Assert.Contains("was changed", PaperCode.Fault(changed, Signed)!.Says);
        Assert.Contains("none of a handover sheet", PaperCode.Fault("hello", Signed)!.Says);
    }

    private static JobState Other(string job) => FullJob.Released with { Job = job };
}
