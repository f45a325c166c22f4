namespace Witnessmark.Bench.Campaigns;

/// <summary>
/// Places of the fields in a row of the public recall file, from 0, with the names that its own layout gives them. Only those
/// that are taken are named.
/// </summary>
/// <remarks>
/// <b>Source.</b> US National Highway Traffic Safety Administration, flat file of recalls, layout RCL.txt (second-hand copy): fields
/// between tabs, no head line. It began with 22 fields and grew: NOTES 2007, RCL_CMPT_ID 2008, three of the maker's part 2020,
/// DO_NOT_DRIVE and PARK_OUTSIDE 2025. RECORD_ID (0) is counted anew each time the file is made and tells nothing.
/// </remarks>
internal enum RecallField
{
    CampNo = 1,
    MakeTxt = 2,
    ModelTxt = 3,
    YearTxt = 4,
    MfgCampNo = 5,
    CompName = 6,
    MfgName = 7,
    BgMan = 8,
    EndMan = 9,
    PotAff = 11,
    RcDate = 15,
    DescDefect = 19,
    ConsequenceDefect = 20,
    CorrectiveAction = 21,
    Notes = 22,
    DoNotDrive = 27,
    ParkOutside = 28,
}

/// <summary>How many fields a row has.</summary>
internal static class RecallLayout
{
    public const int Oldest = 22;
    public const int Newest = 29;

    /// <summary>Longer than any row can be: three texts of 2000 characters, four bytes each, and the short fields.</summary>
    public const int LongestLine = 64 * 1024;
}
