using Witnessmark.Doors;
using Witnessmark.Ledger.Doors;

namespace Witnessmark.Tests.Doors;

public sealed class SigningInTests : IDisposable
{
    private readonly ClosedShop shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public void Somebody_with_a_start_code_chooses_digits_and_signs_in_with_them()
    {
        var first = shop.Started();
        Assert.Equal((ClosedShop.Technician, Role.Technician), (first.You.Person, first.You.Role));
        shop.Door.SignOut(first.Token);
        Assert.Null(shop.Door.Who(first.Token, deed: true));
        var again = shop.SignIn(ClosedShop.Technician, ClosedShop.Pin).Yes!;
        Assert.Equal(ClosedShop.Technician, shop.Door.Who(again.Token, deed: true)!.Person);
    }

    [Fact]
    public void A_device_has_one_session_at_a_time()
    {
        var bram = shop.Started();
        var ines = shop.SignIn(ClosedShop.Lead, ClosedShop.Passphrase).Yes!;
        Assert.Null(shop.Door.Who(bram.Token, deed: true));
        Assert.Equal(Role.Lead, shop.Door.Who(ines.Token, deed: true)!.Role);
    }

    [Fact]
    public void A_start_code_is_good_once_for_its_person_and_a_day()
    {
        var code = shop.Door.StartCode(ClosedShop.Technician, ClosedShop.Lead).Yes!;
        Assert.NotNull(Start(ClosedShop.Reader, code).No);
        Assert.NotNull(Start(ClosedShop.Technician, code).No); // the one that was tried for somebody else is gone
        code = shop.Door.StartCode(ClosedShop.Technician, ClosedShop.Lead).Yes!;
        Assert.Null(Start(ClosedShop.Technician, code.ToLowerInvariant().Replace("-", " ")).No);
        Assert.NotNull(Start(ClosedShop.Technician, code).No);
        code = shop.Door.StartCode(ClosedShop.Technician, ClosedShop.Lead).Yes!;
        shop.Clock.Pass(TimeSpan.FromHours(24));
        Assert.NotNull(Start(ClosedShop.Technician, code).No);
    }

    [Fact]
    public void Digits_that_are_not_good_enough_leave_the_code_as_it_was()
    {
        var code = shop.Door.StartCode(ClosedShop.Technician, ClosedShop.Lead).Yes!;
        Assert.Contains(
            "choose these digits",
            Start(ClosedShop.Technician, code, "123456").No,
            StringComparison.Ordinal
        );
        Assert.Null(Start(ClosedShop.Technician, code).No);
    }

    // NIST SP 800-63B-4, 3.2.2: no more than 100 in a row, with rising waits
    [Fact]
    public void Wrong_digits_make_the_door_wait_longer_each_time_and_ten_shut_it()
    {
        shop.Started();
        var waits = new List<TimeSpan>();
        for (var wrong = 1; wrong <= 10; wrong++)
        {
            Assert.NotNull(shop.SignIn(ClosedShop.Technician, "111112").No);
            waits.Add(Opens(shop));
        }
        Assert.Equal(waits.Order(), waits);
        Assert.Equal(TimeSpan.Zero, waits[1]);
        Assert.True(waits[2] > TimeSpan.Zero);
        Assert.Equal(TimeSpan.MaxValue, waits[9]);
        Assert.Contains(shop.Events(), e => e.What == DoorEvents.Shut);
    }

    [Fact]
    public void While_it_waits_even_the_right_digits_do_not_open()
    {
        shop.Started();
        for (var wrong = 0; wrong < 3; wrong++)
            shop.SignIn(ClosedShop.Technician, "111112");
        Assert.Contains(
            "Try again in 5 s",
            shop.SignIn(ClosedShop.Technician, ClosedShop.Pin).No,
            StringComparison.Ordinal
        );
        shop.Clock.Pass(TimeSpan.FromSeconds(5));
        Assert.Null(shop.SignIn(ClosedShop.Technician, ClosedShop.Pin).No);
    }

    [Fact]
    public void A_new_start_code_opens_a_shut_door()
    {
        shop.Started();
        for (var wrong = 1; wrong <= 10; wrong++)
        {
            shop.SignIn(ClosedShop.Technician, "111112");
            shop.Clock.Pass(TimeSpan.FromHours(2));
        }
        Assert.Contains("shut", shop.SignIn(ClosedShop.Technician, ClosedShop.Pin).No, StringComparison.Ordinal);
        Assert.Equal(ClosedShop.Technician, shop.Started(secret: "590217").You.Person);
    }

    [Fact]
    public void Names_that_nobody_has_are_refused_like_wrong_digits_and_leave_nothing_behind()
    {
        shop.Started();
        Assert.Equal(shop.SignIn(ClosedShop.Technician, "111112").No, shop.SignIn("Nobody At All", "111112").No);
        Assert.DoesNotContain(shop.Events(), e => e.Says.Contains("Nobody", StringComparison.Ordinal));
    }

    [Fact]
    public void Who_has_no_secret_yet_gets_in_with_none()
    {
        Assert.NotNull(shop.SignIn(ClosedShop.Technician, "").No);
        Assert.NotNull(shop.SignIn(ClosedShop.Technician, ClosedShop.Pin).No);
    }

    [Fact]
    public void A_new_start_code_signs_its_person_out()
    {
        var bram = shop.Started();
        shop.Door.StartCode(ClosedShop.Technician, ClosedShop.Lead);
        Assert.Null(shop.Door.Who(bram.Token, deed: true));
    }

    [Fact]
    public void A_role_is_what_the_shops_file_says_now()
    {
        var bram = shop.Started();
        shop.Workshop = shop.Workshop with { People = [ClosedShop.Lead], Readers = [ClosedShop.Technician] };
        Assert.Equal(Role.Reader, shop.Door.Who(bram.Token, deed: true)!.Role);
        shop.Workshop = shop.Workshop with { Readers = [] };
        Assert.Null(shop.Door.Who(bram.Token, deed: true));
    }

    private Answered<CameIn> Start(string person, string code, string secret = ClosedShop.Pin) =>
        shop.Door.Start(shop.Tablet.Proof(shop.Door, "start", person), person, code, secret);

    /// <summary>How long until the right digits are looked at again; the clock stands there afterwards.</summary>
    private static TimeSpan Opens(ClosedShop shop)
    {
        var kept = DoorStore.Open(shop.Folder).Look(rows => rows.Person(ClosedShop.Technician));
        if (kept.Shut)
            return TimeSpan.MaxValue;
        var wait = kept.WaitUntil!.Value - shop.Clock.Now;
        shop.Clock.Pass(wait);
        return wait;
    }
}
