using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Record;
using Witnessmark.Bench.Tests.Book;

namespace Witnessmark.Bench.Tests.Jobs;

/// <summary>A machine that leaves only with two signatures. Common practice, no source.</summary>
public sealed class ReleaseByTwoTests
{
    private static AtWork Done() =>
        new AtWork()
            .Writes(
                EntryKind.Arrival,
                EntryBody.Arrival("fell-640-0412", "fell-640", 4, "handover", [new("distance", "each visit")])
            )
            .Reads("distance", "11900 km")
            .Marks("distance");

    [Fact]
    public void One_signature_releases_nothing_and_is_said()
    {
        var state = Done().Releases("Ines Tallow", ofTwo: true).State;
        Assert.Null(state.Release);
        Assert.Equal("Ines Tallow", state.SignedFirst);
        Assert.True(state.MayGo);
    }

    [Theory]
    [InlineData("Bram Okello", true)]
    [InlineData("ines tallow ", false)]
    public void The_second_one_is_another_persons(string second, bool released)
    {
        var state = Done().Releases("Ines Tallow", ofTwo: true).Releases(second, ofTwo: true).State;
        Assert.Equal(released ? "Ines Tallow and Bram Okello" : null, state.Release?.Names);
        Assert.Equal(released ? null : "ines tallow ", state.SignedFirst);
    }

    [Fact]
    public void What_is_read_after_the_first_signature_asks_for_both_again()
    {
        var work = Done().Releases("Ines Tallow", ofTwo: true).Reads("distance", "11901 km").Marks("distance");
        Assert.Null(work.Releases("Bram Okello", ofTwo: true).State.Release);
        Assert.Equal("Bram Okello", work.State.SignedFirst);
        Assert.Equal("Bram Okello and Ines Tallow", work.Releases("Ines Tallow", ofTwo: true).State.Release?.Names);
    }

    [Fact]
    public void Two_devices_that_did_not_see_each_other_may_sign_at_the_same_time()
    {
        var phone = Done();
        var tablet = new AtWork("tablet-2").Sees(phone).Releases("Bram Okello", ofTwo: true);
        phone.Releases("Ines Tallow", ofTwo: true);
        var state = JobFold.Of(AtWork.Job, [.. phone.Entries, .. tablet.Entries], AtWork.Bench);
        Assert.NotNull(state.Release?.Second);
    }

    [Fact]
    public void A_signature_that_was_taken_back_does_not_count()
    {
        var work = Done().Releases("Ines Tallow", ofTwo: true);
        work.Strikes(work.Last.Id).Releases("Bram Okello", ofTwo: true);
        Assert.Null(work.State.Release);
    }

    [Fact]
    public void What_was_signed_when_one_was_enough_stays_released() =>
        Assert.Equal("Ines Tallow", Done().Releases("Ines Tallow").State.Release?.Names);

    [Fact]
    public void A_shop_of_one_cannot_ask_for_two() =>
        Assert.Contains(
            DemoFiles.MistakesWith(
                "shop.toml",
                "people = [\"Ines Tallow\", \"Bram Okello\"]",
                "people = [\"Ines Tallow\"]\nrelease-by-two = true"
            ),
            mistake => mistake.Right.Contains("two people at least")
        );
}
