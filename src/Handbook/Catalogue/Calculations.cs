namespace Witnessmark.Handbook.Catalogue;

/// <summary>All calculations of the handbook, by name.</summary>
public static class Calculations
{
    /// <summary>In the order of the chapters.</summary>
    public static IReadOnlyList<Calculation> All { get; } =
    [
        // Measuring
        ReadingContract.Calculation,
        VerdictContract.Calculation,
        // FinalDrive
        ChainSlackContract.Calculation,
        ChainAdjustmentContract.Calculation,
        ChainTravelContract.Calculation,
        ChainRoundContract.Calculation,
        AxleAlignmentContract.Calculation,
        AxleDifferenceContract.Calculation,
        AxleNutShiftContract.Calculation,
        ChainLengthContract.Calculation,
        ChainWearContract.Calculation,
        ToothHuntingContract.Calculation,
        RoadSpeedContract.Calculation,
        // Fasteners
        TorqueSettingContract.Calculation,
        TorqueToolContract.Calculation,
        BoltPreloadContract.Calculation,
        TighteningOrderContract.Calculation,
        AngleTighteningContract.Calculation,
        // Fluids
        OilFirstFillContract.Calculation,
        OilTopUpContract.Calculation,
        OilTiltContract.Calculation,
        OilWarmthContract.Calculation,
        OilConsumptionContract.Calculation,
        OilViscosityContract.Calculation,
        ViscosityIndexContract.Calculation,
        OilGradeContract.Calculation,
        CoolantFreezingContract.Calculation,
        CoolantMixContract.Calculation,
        BrakeFluidContract.Calculation,
        // Brakes
        BrakeDiscContract.Calculation,
        // Tyres
        TyreMarkingContract.Calculation,
        TyreDateContract.Calculation,
        TyrePressureContract.Calculation,
        TreadDepthContract.Calculation,
        // Wheels
        WheelBalanceContract.Calculation,
        // Chassis
        SuspensionSagContract.Calculation,
        SpringRateContract.Calculation,
        ForkAirContract.Calculation,
        TrailContract.Calculation,
        // Engine
        ValveShimsContract.Calculation,
        CompressionSpreadContract.Calculation,
        // Controls
        CableFreePlayContract.Calculation,
        // Electrics
        BatteryStateContract.Calculation,
        ChargingBudgetContract.Calculation,
        VoltageDropContract.Calculation,
        // Lights
        HeadlampAimContract.Calculation,
        // Identity
        VinContract.Calculation,
        // Wear
        WearForecastContract.Calculation,
        DateForecastContract.Calculation,
        // Due
        ServiceDueContract.Calculation,
        // BenchOrder
        BenchOrderContract.Calculation,
        // Sound
        ToneContract.Calculation,
        BeltTensionContract.Calculation,
        IdleSpeedContract.Calculation,
        IdleChangeContract.Calculation,
    ];

    private static readonly Dictionary<string, Calculation> ByName = All.ToDictionary(c => c.Name);

    /// <summary>The calculation of that name, or null.</summary>
    public static Calculation? Named(string name) => ByName.GetValueOrDefault(name);
}
