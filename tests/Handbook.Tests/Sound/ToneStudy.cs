namespace Witnessmark.Handbook.Tests.Sound;
using Witnessmark.Handbook.Sound;

public class ToneStudy
{
    [Fact]
    public void Study()
    {
        var o = TestContext.Current.TestOutputHelper!;
        (string, Func<SoundMaker, double, SoundMaker>, double, double)[] kinds =
        [
            ("belt", (m, f) => m.Plucked(f), 40, 200), ("spoke", (m, f) => m.Plucked(f, 0.1, 0.15), 250, 900),
            ("engine", (m, f) => m.Firing(f), 12, 70), ("sine", (m, f) => m.Steady(f, 1), 30, 1000),
        ];
        foreach (var (kind, make, lo, hi) in kinds)
            foreach (var hum in new double[] { double.NaN, -6, 0 })
                foreach (var noise in new double[] { 200, 0 })
                    foreach (var ranged in new[] { 0, 1, 2 })
                    {
                        int refused = 0, wrong = 0; var n = 16; double worst = 0, wc = 1; var why = new Dictionary<string,int>(); string bad = "";
                        for (var s = 0; s < n; s++)
                        {
                            var r = new Random(1000 + s);
                            var f = lo * Math.Pow(hi / lo, r.NextDouble());
                            var m = make(new SoundMaker(s), f);
                            if (!double.IsNaN(hum)) m.Hum(50 + 0.1 * (r.NextDouble() - .5), hum);
                            m.Noise(noise);
                            var a = Tone.In(m.Recording, ranged >= 1 ? (new(f / 1.3), new(f * 1.3)) : null, ranged == 2 ? new(50) : null);
                            if (!a.Holds) { refused++; why[a.Refusal!.Because.Split(":")[0]] = why.GetValueOrDefault(a.Refusal!.Because.Split(":")[0]) + 1; continue; }
                            var e = Math.Abs(a.Value!.Frequency.Hertz / f - 1);
                            worst = Math.Max(worst, e); wc = Math.Min(wc, a.Value.Clarity);
                            if (e > 0.005) { wrong++; bad += $" {f:f1}->{a.Value.Frequency.Hertz:f1}"; }
                        }
                        o.WriteLine($"{kind,-7} hum {hum,4} noise {noise,3} ranged {ranged}: refused {refused}/{n} wrong {wrong} worst {worst:p2} leastclarity {wc:f2} {bad} {string.Join(',', why)}");
                    }
        int fa = 0, far = 0;
        for (var s = 0; s < 20; s++)
        {
            var m = new SoundMaker(s).NoiseOf(0.1);
            if (Tone.In(m.Recording).Holds) fa++;
            if (Tone.In(m.Recording, (new(60), new(120))).Holds) far++;
        }
        o.WriteLine($"noise only: {fa} {far} of 60");
    }
}
