using System.Numerics;

namespace Witnessmark.Handbook.BenchOrder;

/// <summary>A set of tasks by number, 0 to 127.</summary>
internal readonly record struct TaskSet(ulong Low, ulong High)
{
    public const int Most = 128;

    public int Count => BitOperations.PopCount(Low) + BitOperations.PopCount(High);

    public bool IsEmpty => (Low | High) == 0;

    public bool Has(int task) => ((task < 64 ? Low >> task : High >> (task - 64)) & 1) != 0;

    public TaskSet With(int task) =>
        task < 64 ? this with { Low = Low | (1UL << task) } : this with { High = High | (1UL << (task - 64)) };

    public bool Contains(TaskSet other) => ((other.Low & ~Low) | (other.High & ~High)) == 0;

    public TaskSet Without(TaskSet other) => new(Low & ~other.Low, High & ~other.High);

    public override int GetHashCode() => (int)((Low * 0x9E3779B97F4A7C15UL + High * 0xC2B2AE3D27D4EB4FUL) >> 32);

    public bool Equals(TaskSet other) => Low == other.Low && High == other.High;
}
