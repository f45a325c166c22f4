using Witnessmark.Certificates;
using Witnessmark.Handbook.Languages;
using Witnessmark.Serve;

namespace Witnessmark.Tests.Certificates;

public class TrustPageTests
{
    private const string Android =
        "Mozilla/5.0 (Linux; Android 10; K) AppleWebKit/537.36 Chrome/140.0 Mobile Safari/537.36";
    private const string Ipad =
        "Mozilla/5.0 (Macintosh; Intel Mac OS X 10_15_7) AppleWebKit/605.1.15 Version/18.0 Safari/605.1.15";
    private const string Windows =
        "Mozilla/5.0 (Windows NT 10.0; Win64; x64) AppleWebKit/537.36 Chrome/140.0 Edg/140.0";
    private const string Firefox = "Mozilla/5.0 (X11; Linux x86_64; rv:140.0) Gecko/20100101 Firefox/140.0";

    [Theory]
    [InlineData(Android, "Android")]
    [InlineData(Ipad, "iPhone or iPad")]
    [InlineData(Windows, "Windows")]
    [InlineData(Firefox, "Firefox")]
    [InlineData("curl/8", null)]
    [InlineData(null, null)]
    public void The_guide_of_the_device_is_open_and_the_others_are_there(string? agent, string? device)
    {
        var page = Page(agent: agent);
        Assert.Equal(4, page.Split("<details ").Length - 1);
        var open = page.Split("<details name=\"device\" open>")
            .Skip(1)
            .Select(p => p.Split("summary>")[1].Split('<')[0]);
        Assert.Equal(device is null ? [] : [device], open);
    }

    [Fact]
    public void What_a_shop_is_called_and_how_it_was_asked_for_is_text_and_no_markup()
    {
        var page = Page("<b>A & B</b>", "https://x\"><script>alert(1)</script>/");
        Assert.Contains("&lt;b&gt;A &amp; B&lt;/b&gt; authority ", page);
        Assert.DoesNotContain("<script", page);
    }

    [Fact]
    public void It_says_what_the_authority_can_vouch_for() =>
        Assert.Contains("for the domains local, localhost, home.arpa, internal, bench-1: not for your bank", Page());

    [Theory]
    [InlineData("192.168.1.7", "192.168.1.7", false)]
    [InlineData("192.168.1.7", "192.168.1.8", true)]
    [InlineData("bench-1", "192.168.1.8", false)] // by name it is found wherever it is
    public void A_computer_that_got_another_address_is_noticed(string certificate, string computer, bool elsewhere) =>
        Assert.Equal(
            elsewhere,
            ListeningText.IsElsewhere(
                ShopFolder.Names(certificate),
                ServerNames.OfComputer("pc-1", ShopFolder.Addresses(computer))
            )
        );

    [Fact]
    public void It_is_in_the_language_that_the_browser_asks_for()
    {
        var page = System.Net.WebUtility.HtmlDecode(
            Page(
                tongue: Tongue.German(
                    new(PoFile.Read(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "languages", "de.po"))))
                )
            )
        );
        Assert.Contains("<html lang=\"de\">", page);
        Assert.Contains("<h1>Dieser Werkstatt auf dem eigenen Gerät vertrauen</h1>", page);
        Assert.Contains("VPN und Geräteverwaltung", page); // as an iPhone calls it
        Assert.DoesNotContain(" the ", page);
    }

    private static string Page(
        string shop = "Harrow Lane Motorcycles",
        string at = "https://bench-1:5443/",
        string? agent = null,
        Tongue? tongue = null
    ) =>
        TrustPage.Html(
            Authority.New(shop, ShopFolder.Names("bench-1"), ShopFolder.Noon),
            at,
            here: null,
            agent,
            tongue ?? Tongue.English
        );
}
