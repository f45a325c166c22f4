using Witnessmark.Ledger.PostgreSql;

namespace Witnessmark.Ledger.Tests.PostgreSql;

// Source: own derivation. What the words mean: Npgsql documentation, Security and encryption (Require checks no certificate).
public class GroupConnectionTests
{
    [Theory]
    [InlineData("Host=db1;Username=witnessmark_north")]
    [InlineData("Host=127.0.0.1,db2;Username=witnessmark_north")]
    [InlineData("Host=db1;SSL Mode=Require;Username=witnessmark_north")]
    [InlineData("Host=10.0.0.7:5433;SSL Mode=Allow;Username=witnessmark_north")]
    public void Over_a_network_a_line_that_others_could_read_is_refused(string text)
    {
        var refused = Assert.Throws<FormatException>(() => GroupConnection.Read(text));
        Assert.Contains("VerifyFull", refused.Message);
    }

    [Theory]
    [InlineData("Host=db1,db2;SSL Mode=VerifyFull;Username=witnessmark_north")]
    [InlineData("Host=db1;SSL Mode=Disable;Username=witnessmark_north")]
    [InlineData("Host=/var/run/postgresql;Username=witnessmark_north")]
    [InlineData("Host=localhost:5433,127.0.0.1,[::1]:5434;Username=witnessmark_north")]
    public void A_guarded_line_and_one_within_the_computer_are_taken(string text) =>
        Assert.Equal(TargetSessionAttributesUnset, GroupConnection.Read(text).TargetSessionAttributes);

    [Theory]
    [InlineData("Horst=db1")]
    [InlineData("Host")]
    public void What_is_no_connection_is_said(string text) =>
        Assert.Throws<FormatException>(() => GroupConnection.Read(text));

    [Fact]
    public void The_shop_is_who_logs_in()
    {
        Assert.Equal("shop_north", GroupShop.NameIn("Host=/x;Username=witnessmark_north").Schema);
        Assert.Throws<FormatException>(() => GroupShop.NameIn("Host=/x;Username=postgres"));
        Assert.Throws<FormatException>(() => GroupShop.NameIn("Host=/x"));
    }

    [Theory]
    [InlineData("")]
    [InlineData("North")]
    [InlineData("1st")]
    [InlineData("a b")]
    [InlineData("x'; DROP TABLE entries; --")]
    [InlineData("north\n")]
    [InlineData("größe")]
    public void Other_names_of_shops_are_refused(string name) =>
        Assert.Throws<FormatException>(() => ShopName.Of(name));

    private const string? TargetSessionAttributesUnset = null;
}
