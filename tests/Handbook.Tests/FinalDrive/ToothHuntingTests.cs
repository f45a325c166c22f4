using FsCheck.Xunit;
using Witnessmark.Handbook.FinalDrive;

namespace Witnessmark.Handbook.Tests.FinalDrive;

public class ToothHuntingTests
{
    // Oracle: the chain is run until the tooth has met the same link again
    private static int Met(int teeth, int links)
    {
        var met = new HashSet<int>();
        for (var link = 0; met.Add(link); link = (link + teeth) % links) { }
        return met.Count;
    }

    [Property(MaxTest = 500)]
    public void A_tooth_meets_as_many_links_as_it_meets(byte front, byte rear, byte links)
    {
        var (z1, z2, n) = (front + 5, rear + 5, links + 10);
        var told = ToothHunting.From(z1, z2, n);
        Assert.Equal((Met(z1, n), Met(z2, n)), (told.PerFrontTooth, told.PerRearTooth));
        Assert.Equal(Met(z1, n) == n && Met(z2, n) == n, told.FullyHunting);
    }
}
