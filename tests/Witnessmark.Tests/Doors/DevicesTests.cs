using Microsoft.Data.Sqlite;
using Witnessmark.Doors;
using Witnessmark.Ledger.Doors;

namespace Witnessmark.Tests.Doors;

public sealed class DevicesTests : IDisposable
{
    private readonly ClosedShop shop = new();
    private readonly TestDevice stranger = new("d-stranger");

    public void Dispose()
    {
        stranger.Dispose();
        shop.Dispose();
    }

    [Fact]
    public void A_device_that_was_not_let_in_learns_no_name_and_opens_nothing()
    {
        shop.Started();
        Assert.NotNull(shop.Door.Names(stranger.Proof(shop.Door, "names")).No);
        var proof = stranger.Proof(shop.Door, "sign in", ClosedShop.Technician);
        Assert.NotNull(shop.Door.SignIn(proof, ClosedShop.Technician, ClosedShop.Pin).No);
    }

    [Fact]
    public void A_code_lets_one_device_in_within_its_time()
    {
        var code = shop.Door.DeviceCode(ClosedShop.Lead);
        Assert.Null(Enrol(stranger, code).No);
        using var second = new TestDevice("d-second");
        Assert.NotNull(Enrol(second, code).No);
        code = shop.Door.DeviceCode(ClosedShop.Lead);
        shop.Clock.Pass(TimeSpan.FromMinutes(15));
        Assert.NotNull(Enrol(second, code).No);
    }

    // OWASP ASVS 5.0, 6.5.2: a short code is kept as slowly as a password
    [Fact]
    public void Of_a_code_a_slow_hash_is_kept_and_one_that_an_earlier_program_gave_is_still_good()
    {
        var code = Token.Typed(shop.Door.DeviceCode(ClosedShop.Lead));
        Assert.Equal([64], Kept().Select(hash => hash.Length));
        Assert.DoesNotContain(Token.Hash(code), Kept());
        Assert.Null(Enrol(stranger, code).No);
        Assert.Empty(Kept());
        var until = shop.Clock.GetUtcNow().AddMinutes(15);
        Store()
            .Do(rows =>
            {
                rows.Add(new KeptCode(Token.Hash("23456789AB"), null, ClosedShop.Lead, until));
                return true;
            });
        using var second = new TestDevice("d-second");
        Assert.Null(Enrol(second, "23456-789AB").No);
        Assert.Empty(Kept());
    }

    private DoorStore Store() => DoorStore.Open(shop.Folder);

    private List<string> Kept()
    {
        using var file = new SqliteConnection($"Data Source={Path.Combine(shop.Folder, DoorStore.FileName)}");
        file.Open();
        using var ask = file.CreateCommand();
        ask.CommandText = "SELECT hash FROM code";
        using var row = ask.ExecuteReader();
        List<string> kept = [];
        while (row.Read())
            kept.Add(row.GetString(0));
        return kept;
    }

    [Fact]
    public void A_start_code_lets_no_device_in()
    {
        var code = shop.Door.StartCode(ClosedShop.Technician, ClosedShop.Lead).Yes!;
        Assert.NotNull(Enrol(stranger, code).No);
    }

    [Fact]
    public void Another_key_does_not_speak_for_a_device()
    {
        shop.Started();
        using var thief = new TestDevice(shop.Tablet.Id);
        Assert.NotNull(shop.Door.Names(thief.Proof(shop.Door, "names")).No);
        Assert.NotNull(Enrol(thief, shop.Door.DeviceCode(ClosedShop.Lead)).No);
    }

    [Fact]
    public void A_signature_is_good_once_for_one_deed_one_person_and_two_minutes()
    {
        shop.Started();
        var proof = shop.Tablet.Proof(shop.Door, "sign in", ClosedShop.Technician);
        Assert.NotNull(shop.Door.Names(proof).No);
        Assert.NotNull(shop.Door.SignIn(proof, ClosedShop.Lead, ClosedShop.Passphrase).No);
        Assert.Null(shop.Door.SignIn(proof, ClosedShop.Technician, ClosedShop.Pin).No);
        Assert.NotNull(shop.Door.SignIn(proof, ClosedShop.Technician, ClosedShop.Pin).No);
        var late = shop.Tablet.Proof(shop.Door, "sign in", ClosedShop.Technician);
        shop.Clock.Pass(Nonce.Life);
        Assert.NotNull(shop.Door.SignIn(late, ClosedShop.Technician, ClosedShop.Pin).No);
    }

    [Theory]
    [InlineData("")]
    [InlineData("AAAA")]
    [InlineData("not base64 at all, and longer than a nonce could ever be written in the alphabet of base64url")]
    public void A_number_that_the_shop_did_not_give_is_none(string nonce)
    {
        var proof = new DeviceProof(shop.Tablet.Id, nonce, shop.Tablet.Sign("names", nonce));
        Assert.NotNull(shop.Door.Names(proof).No);
    }

    [Fact]
    public void A_number_whose_time_was_changed_is_none()
    {
        var nonce = shop.Door.NewNonce();
        var changed = (nonce[0] == 'A' ? 'B' : 'A') + nonce[1..];
        var proof = new DeviceProof(shop.Tablet.Id, changed, shop.Tablet.Sign("names", changed));
        Assert.NotNull(shop.Door.Names(proof).No);
    }

    [Fact]
    public void A_device_shut_out_is_out_at_once_with_whoever_is_signed_in_on_it()
    {
        var bram = shop.Started();
        Assert.Null(shop.Door.ShutOut(shop.Tablet.Id, ClosedShop.Lead).No);
        Assert.Null(shop.Door.Who(bram.Token, deed: true));
        Assert.NotNull(shop.SignIn(ClosedShop.Technician, ClosedShop.Pin).No);
        Assert.Equal(404, shop.Door.ShutOut("d-unknown", ClosedShop.Lead).Status);
    }

    [Theory]
    [InlineData("d-ok", "Tablet\nInes Tallow signed in.")]
    [InlineData("d-ok", " ")]
    [InlineData("", "Tablet")]
    [InlineData("d ok", "Tablet")]
    public void Names_that_would_write_lines_of_their_own_into_the_book_are_refused(string id, string label)
    {
        var nonce = shop.Door.NewNonce();
        var named = stranger.Described() with { Id = id, Label = label };
        var let = shop.Door.LetIn(shop.Door.DeviceCode(ClosedShop.Lead), named, nonce, stranger.Sign("enrol", nonce));
        Assert.Equal(400, let.Status);
    }

    [Fact]
    public void A_key_that_is_none_is_said_to_be()
    {
        var nonce = shop.Door.NewNonce();
        var off = stranger.Described() with { KeyY = stranger.X };
        var let = shop.Door.LetIn(shop.Door.DeviceCode(ClosedShop.Lead), off, nonce, stranger.Sign("enrol", nonce));
        Assert.Equal(400, let.Status);
    }

    private Answered<Ledger.Doors.KeptDevice> Enrol(TestDevice device, string code)
    {
        var nonce = shop.Door.NewNonce();
        return shop.Door.LetIn(code, device.Described(), nonce, device.Sign("enrol", nonce));
    }
}
