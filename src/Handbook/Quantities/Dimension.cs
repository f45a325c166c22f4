namespace Witnessmark.Handbook.Quantities;

/// <summary>
/// What kind of quantity a unit measures. Finer than physics: a slack law (mm² per mm) is not a length and a flat is not
/// a turn (it depends on the nut), so that one can never be given for the other.
/// </summary>
public enum Dimension
{
    /// <summary>A pure number; per cent.</summary>
    Number,

    /// <summary>Length or distance.</summary>
    Length,

    /// <summary>Area, or a slack squared.</summary>
    Area,

    /// <summary>Volume.</summary>
    Volume,

    /// <summary>Plane angle.</summary>
    Angle,

    /// <summary>Turns of an adjuster.</summary>
    Turn,

    /// <summary>Flats of a nut or bolt head; how many make a turn belongs to the fastener.</summary>
    Flat,

    /// <summary>Torque.</summary>
    Torque,

    /// <summary>Force.</summary>
    Force,

    /// <summary>Pressure.</summary>
    Pressure,

    /// <summary>Temperature.</summary>
    Temperature,

    /// <summary>Speed.</summary>
    Speed,

    /// <summary>Time.</summary>
    Duration,

    /// <summary>Calendar months, which have no fixed length.</summary>
    CalendarMonths,

    /// <summary>Voltage.</summary>
    Voltage,

    /// <summary>Electric current.</summary>
    Current,

    /// <summary>Electric resistance.</summary>
    Resistance,

    /// <summary>Power.</summary>
    Power,

    /// <summary>Electric charge.</summary>
    Charge,

    /// <summary>Spring rate.</summary>
    Stiffness,

    /// <summary>Mass.</summary>
    Mass,

    /// <summary>Frequency or engine speed.</summary>
    Frequency,

    /// <summary>Kinematic viscosity.</summary>
    KinematicViscosity,

    /// <summary>Dynamic viscosity.</summary>
    DynamicViscosity,

    /// <summary>Slack squared for each length of axle travel.</summary>
    AreaPerLength,

    /// <summary>Slack squared for each turn.</summary>
    AreaPerTurn,

    /// <summary>Length for each turn.</summary>
    LengthPerTurn,

    /// <summary>Length for each length.</summary>
    LengthPerLength,

    /// <summary>Thermal expansion.</summary>
    PerTemperature,

    /// <summary>Mass for each length.</summary>
    MassPerLength,

    /// <summary>Distance for each square root of time.</summary>
    LengthPerRootDuration,
}
