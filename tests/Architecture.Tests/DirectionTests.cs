using System.Xml.Linq;
using NetArchTest.Rules;

namespace Witnessmark.Architecture.Tests;

/// <summary>Arrows point one way: Handbook ← Bench ← {Paper, Ledger}; the browser draws with Paper; the program knows all.</summary>
public class DirectionTests
{
    private static readonly Dictionary<string, string[]> MayReference = new()
    {
        ["Handbook"] = [],
        ["Bench"] = ["Handbook"],
        ["Paper"] = ["Bench", "Handbook"],
        ["Ledger"] = ["Bench", "Handbook"],
        ["DaySolver"] = ["Bench", "Handbook"],
        ["HandbookPages"] = [], // makes pages while the client is built; nothing of it is in the client
        ["Client"] = ["Paper", "Bench", "Handbook", "HandbookPages"],
        ["Witnessmark"] = ["Client", "DaySolver", "Ledger", "Paper", "Bench", "Handbook"],
    };

    public static TheoryData<string> Projects =>
        [
            .. Directory.GetFiles(
                Path.Combine(AppContext.BaseDirectory, "projects"),
                "*.csproj",
                SearchOption.AllDirectories
            ),
        ];

    [Theory]
    [MemberData(nameof(Projects))]
    public void A_project_references_only_what_lies_before_it(string project)
    {
        var name = Path.GetFileNameWithoutExtension(project);
        var references = XDocument
            .Load(project)
            .Descendants("ProjectReference")
            .Select(r => Path.GetFileNameWithoutExtension(r.Attribute("Include")!.Value));
        Assert.Empty(references.Except(MayReference[name]));
    }

    [Fact]
    public void Every_room_of_the_house_is_there() =>
        Assert.Equal(
            MayReference.Keys.Order(),
            Projects.Select(row => Path.GetFileNameWithoutExtension(row.Data)).Order()
        );

    [Fact]
    public void The_handbook_knows_no_file_no_network_and_no_store()
    {
        var result = Types
            .InAssembly(typeof(Handbook.Refusal).Assembly)
            .ShouldNot()
            .HaveDependencyOnAny(
                // streams are no files: the published tables lie inside the library
                "System.IO.File",
                "System.IO.Directory",
                "System.IO.Drive",
                "System.IO.Pipes",
                "System.Net",
                "Tomlyn",
                "PdfSharp",
                "Microsoft.EntityFrameworkCore",
                "Witnessmark.Bench"
            )
            .GetResult();
        Assert.Empty(result.FailingTypes?.Select(t => t.FullName) ?? []);
    }

    [Fact]
    public void The_bench_knows_no_network_no_store_and_no_paper()
    {
        var result = Types
            .InAssembly(typeof(Bench.Jobs.JobFold).Assembly)
            .ShouldNot()
            .HaveDependencyOnAny(
                "System.Net.Http",
                "System.IO.File",
                "PdfSharp",
                "Microsoft.EntityFrameworkCore",
                "Witnessmark.Paper",
                "Witnessmark.Ledger"
            )
            .GetResult();
        Assert.Empty(result.FailingTypes?.Select(t => t.FullName) ?? []);
    }
}
