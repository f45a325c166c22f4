using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using Witnessmark.Paper.LogBook;

namespace Witnessmark.Paper.Tests;

/// <summary>What is written fits docs/log-book.schema.json, read by an independent validator (JsonSchema.Net).</summary>
public sealed class LogBookSchemaTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(
        File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "files", "log-book.schema.json"))
    );

    private static JsonNode File2 =>
        JsonNode.Parse(
            LogBookFile.Write(FullJob.Released, Bench640.Workbench, TestSeals.Harrow, null, ["Fell 640", "page 1 of 1"])
        )!;

    [Fact]
    public void A_signed_file_with_its_paper_fits() => Assert.True(Fits(File2));

    [Fact]
    public void An_unsigned_file_and_a_held_job_fit() =>
        Assert.True(Fits(JsonNode.Parse(LogBookFile.Write(FullJob.Held, Bench640.Workbench))!));

    [Theory]
    [InlineData("head", "ABC")]
    [InlineData("count", "three")]
    [InlineData("signature", "no.signature")]
    [InlineData("holds", "none")]
    public void A_visit_with_a_wrong_field_does_not_fit(string field, string wrong)
    {
        var file = File2;
        file["visits"]![0]![field] = wrong;
        Assert.False(Fits(file));
    }

    private static bool Fits(JsonNode file) => Schema.Evaluate(JsonSerializer.SerializeToElement(file)).IsValid;
}
