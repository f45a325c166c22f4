using Witnessmark.Groups;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Groups;

// Source: own derivation.
public sealed class GroupFileTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void It_is_its_owners_alone_and_is_not_written_over()
    {
        var path = Path.Combine(folder.Path, "north.json");
        var made = GroupFile.New("Host=/x;Username=witnessmark_north");
        made.Write(path);
        Assert.Equal(made, GroupFile.Read(path));
        Assert.Equal(SealedSecret.KeyBytes, made.OpensSecrets.Length);
        Assert.Throws<IOException>(() => made.Write(path));
        if (OperatingSystem.IsWindows())
            return;
        File.SetUnixFileMode(path, UnixFileMode.UserRead | UnixFileMode.GroupRead);
        Assert.Contains("chmod 600", Assert.Throws<FormatException>(() => GroupFile.Read(path)).Message);
    }

    [Theory]
    [InlineData("{")]
    [InlineData("null")]
    [InlineData("""{"key":"x"}""")]
    public void What_is_no_such_file_is_said(string text)
    {
        var path = Path.Combine(folder.Path, "north.json");
        new GroupFile("x", null).Write(path);
        File.WriteAllText(path, text);
        Assert.Contains("north.json", Assert.Throws<FormatException>(() => GroupFile.Read(path)).Message);
    }

    [Fact]
    public void A_file_without_a_key_opens_no_secrets() =>
        Assert.Contains(
            "no \"key\"",
            Assert.Throws<FormatException>(() => new GroupFile("x", "AAAA").OpensSecrets).Message
        );
}
