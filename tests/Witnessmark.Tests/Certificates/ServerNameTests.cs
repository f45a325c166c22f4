using Witnessmark.Certificates;

namespace Witnessmark.Tests.Certificates;

public class ServerNameTests
{
    [Theory]
    [InlineData("", "An empty name is none.")]
    [InlineData("bench 1", "has a blank in it")]
    [InlineData(" bench-1", "has a blank in it")]
    [InlineData("*.local", "name each that devices open")]
    [InlineData("https://bench-1", "without https:// and port")]
    [InlineData("bench-1:5443", "without https:// and port")]
    [InlineData("[fd00::7]", "without https:// and port")]
    [InlineData("bench_1", "no name of a computer")]
    [InlineData("-bench1", "no name of a computer")]
    [InlineData("bench1-", "no name of a computer")]
    [InlineData("bench..local", "no name of a computer")]
    [InlineData("bench.local.", "no name of a computer")]
    [InlineData("süd.local", "in their xn-- form")]
    [InlineData("256.1.1.1", "no address")]
    [InlineData("192.168.1", "no address")]
    [InlineData("192.168.010.1", "no address")] // octal: 192.168.8.1
    [InlineData("fd00::7%eth0", "no address")]
    [InlineData("fd00::g", "no address")]
    [InlineData("203.0.113.7", "of the public internet")]
    [InlineData("2001:db8::7", "of the public internet")]
    [InlineData("shop", "could be a top-level domain")]
    [InlineData("xn--p1ai", "could be a top-level domain")]
    public void What_no_certificate_can_be_for_is_said(string name, string said)
    {
        Assert.Contains(said, ServerName.Refusal(name));
        var (names, why) = ServerNames.Read(["bench-1.local", name]);
        Assert.Null(names);
        Assert.Contains(said, why);
    }

    [Fact]
    public void A_label_of_more_than_63_letters_is_none() // RFC 1035, 2.3.4
    {
        Assert.Null(ServerName.Refusal($"{new string('a', 63)}.local"));
        Assert.Contains("no name", ServerName.Refusal($"{new string('a', 64)}.local"));
        var deep = string.Join('.', Enumerable.Repeat(new string('a', 49), 5));
        Assert.Contains("no name", ServerName.Refusal($"{deep}.aaaa")); // 254
        Assert.Null(ServerName.Refusal($"{deep}.aaa"));
    }

    [Theory]
    [InlineData("bench-1")]
    [InlineData("Bench-1.local")]
    [InlineData("shop.fritz.box")]
    [InlineData("localhost")]
    [InlineData("172.31.255.1")]
    [InlineData("100.100.1.1")]
    [InlineData("fd00::7")]
    public void What_a_shop_has_at_home_is_taken(string name) => Assert.Null(ServerName.Refusal(name));

    [Fact]
    public void Names_are_taken_once_in_small_letters_and_this_computer_is_always_among_them() =>
        Assert.Equal(
            ["bench-1.local", "localhost", "192.168.1.7", "127.0.0.1", "::1"],
            ServerNames.Read(["Bench-1.local", "bench-1.LOCAL", "192.168.1.7", "192.168.1.7"]).Names!.All
        );

    [Theory]
    // a name of letters alone could be a top-level domain, one with an underscore is none
    [InlineData("Shop", "shop.local")]
    [InlineData("my_pc", "")]
    [InlineData("DESKTOP-4F2K1", "desktop-4f2k1 desktop-4f2k1.local")]
    [InlineData("pc.example.org", "pc.example.org pc.local")]
    public void A_computer_is_called_by_its_name_and_in_local(string host, string names) =>
        Assert.Equal(
            names.Split(' ', StringSplitOptions.RemoveEmptyEntries),
            ServerNames.OfComputer(host, []).Dns.Where(d => d != "localhost")
        );

    [Fact]
    public void Of_its_addresses_those_of_its_network_are_taken() =>
        Assert.Equal(
            ["192.168.1.7", "fd00::7"],
            ServerNames
                .OfComputer(
                    "pc-1",
                    ShopFolder.Addresses(
                        "192.168.1.7",
                        "203.0.113.7",
                        "169.254.3.4",
                        "fe80::1",
                        "fd00::7",
                        "2001:db8::7"
                    )
                )
                .Addresses.Where(a => !System.Net.IPAddress.IsLoopback(a))
                .Select(a => a.ToString())
        );

    [Fact]
    public void A_device_is_told_the_shortest_way_first() =>
        Assert.Equal(
            ["10.0.0.9", "[fd00::7]", "bench-1.local"],
            ShopFolder.Names("bench-1.local", "fd00::7", "10.0.0.9").FromOutside
        );
}
