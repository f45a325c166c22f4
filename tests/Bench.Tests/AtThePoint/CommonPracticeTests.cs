using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Tests.Book;

namespace Witnessmark.Bench.Tests.AtThePoint;

public class CommonPracticeTests
{
    private const string File = "book/common-practice.toml";

    [Fact]
    public void Every_habit_says_that_it_is_common_practice_and_can_judge_a_point()
    {
        var book = DemoFiles.Bench.Book;
        Assert.NotEmpty(book.CommonPractice);
        Assert.All(
            book.CommonPractice,
            p =>
            {
                Assert.Equal(OriginKind.CommonPractice, p.Value.Figure.Origin.Kind);
                Assert.NotNull(p.Value.Figure.Limit);
                Assert.Contains(book.Points.Values, point => point.JudgedBy == p.Key);
            }
        );
    }

    // a habit from another machine can break a bolt, a tyre or an engine
    [Fact]
    public void There_is_none_for_what_belongs_to_one_model() =>
        Assert.DoesNotContain(
            DemoFiles.Bench.Book.CommonPractice.Keys,
            k => DemoFiles.Bench.Book.FigureKeys[k].Unit.Symbol is "N·m" or "L" or "kPa" || k is "chain.slack"
        );

    [Theory]
    [InlineData(
        "min = \"2 mm\"\norigin = \"common practice\"\nwords = \"Many",
        "min = \"2 mm\"\norigin = \"shop\"\nwords = \"Many",
        "\"shop\""
    )]
    [InlineData(
        "[common-practice.\"tyre.age\"]",
        "[common-practice.\"tyre.agee\"]",
        "there is no figure key \"tyre.agee\""
    )]
    [InlineData("max = \"3650 day\"", "max = \"3650 mm\"", "common practice for \"tyre.age\" is in mm")]
    [InlineData("max = \"10 g\"", "amount = \"10 g\"", "common practice for \"wheel.imbalance\" is 10 g")]
    [InlineData("max = \"10 g\"", "max = \"10\"", "the unit is missing")]
    [InlineData("words = \"Between the marks of the tank.\"", "", "\"words\" is missing")]
    public void A_mistake_in_one_is_told(string old, string other, string said) =>
        Assert.Contains(said, Assert.Single(DemoFiles.MistakesWith(File, old, other)).Found);

    [Fact]
    public void The_shop_puts_its_own_over_it()
    {
        const string own =
            "[common-practice.\"tyre.age\"]\nmax = \"2190 day\"\norigin = \"common practice\"\nwords = \"Six years.\"\n";
        var read = BookFiles.Read([
            [.. DemoFiles.All.Where(f => f.Name.StartsWith("book/"))],
            [new("own-book/habits.toml", own)],
        ]);
        Assert.Equal("≤ 2190 days", read.Book!.CommonPractice["tyre.age"].Figure.Short);
        Assert.Contains(read.Overridden, o => o.What == "common practice for \"tyre.age\"");
    }
}
