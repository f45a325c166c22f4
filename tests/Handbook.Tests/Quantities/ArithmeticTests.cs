using System.Reflection;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Tests;

/// <summary>The arithmetic that every quantity writes out for itself, against that of plain numbers.</summary>
public class ArithmeticTests
{
    private static readonly Type[] All =
    [
        .. typeof(Length)
            .Assembly.GetTypes()
            .Where(t => t.IsValueType && t.GetInterfaces().Any(IsQuantity))
            .OrderBy(t => t.Name, StringComparer.Ordinal),
    ];

    public static TheoryData<Type> Quantities() => new(All);

    [Theory]
    [MemberData(nameof(Quantities))]
    public void Sums_multiples_and_ratios_are_those_of_the_numbers(Type quantity)
    {
        var (seven, two) = (Of(quantity, 7), Of(quantity, 2));
        Assert.Equal(9, Base(Op(quantity, "Addition", seven, two)));
        Assert.Equal(5, Base(Op(quantity, "Subtraction", seven, two)));
        Assert.Equal(-7, Base(Op(quantity, "UnaryNegation", seven)));
        Assert.Equal(14, Base(Op(quantity, "Multiply", seven, 2.0)));
        Assert.Equal(14, Base(Op(quantity, "Multiply", 2.0, seven)));
        Assert.Equal(3.5, Base(Op(quantity, "Division", seven, 2.0)));
        Assert.Equal(3.5, Op(quantity, "Division", seven, two));
    }

    [Theory]
    [MemberData(nameof(Quantities))]
    public void The_order_is_that_of_the_numbers(Type quantity)
    {
        foreach (var (a, b) in ((double, double)[])[(7, 2), (2, 7), (7, 7), (-7, 2)])
        {
            object[] both = [Of(quantity, a), Of(quantity, b)];
            Assert.Equal(a < b, Op(quantity, "LessThan", both));
            Assert.Equal(a > b, Op(quantity, "GreaterThan", both));
            Assert.Equal(a <= b, Op(quantity, "LessThanOrEqual", both));
            Assert.Equal(a >= b, Op(quantity, "GreaterThanOrEqual", both));
        }
    }

    // NIST SP 811 (2008), B.8: t/°F = 1.8·t/°C + 32
    [Theory]
    [InlineData(0, 32)]
    [InlineData(100, 212)]
    [InlineData(-40, -40)]
    public void A_temperature_is_read_back_on_the_other_scale(double celsius, double fahrenheit) =>
        Assert.Equal(fahrenheit, UnitTable.Named("°F").FromBase(celsius), 1e-12);

    private static bool IsQuantity(Type type) =>
        type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IQuantity<>);

    private static object Of(Type quantity, double value) =>
        quantity.GetMethod("OfBase", BindingFlags.Public | BindingFlags.Static)!.Invoke(null, [value])!;

    private static double Base(object? quantity) =>
        (double)quantity!.GetType().GetProperty("Base")!.GetValue(quantity)!;

    private static object? Op(Type quantity, string name, params object[] values) =>
        quantity.GetMethod($"op_{name}", [.. values.Select(v => v.GetType())])!.Invoke(null, values);
}
