using System.Text;

namespace Witnessmark.Bench.Tests.Campaigns;

/// <summary>A row of the public recall file, field by field by the names of its layout; everything in it is invented.</summary>
internal sealed class RowText
{
    // NHTSA flat file of recalls, layout RCL.txt (second-hand copy)
    public static readonly string[] Names =
    [
        "RECORD_ID",
        "CAMPNO",
        "MAKETXT",
        "MODELTXT",
        "YEARTXT",
        "MFGCAMPNO",
        "COMPNAME",
        "MFGNAME",
        "BGMAN",
        "ENDMAN",
        "RCLTYPECD",
        "POTAFF",
        "ODATE",
        "INFLUENCED_BY",
        "MFGTXT",
        "RCDATE",
        "DATEA",
        "RPNO",
        "FMVSS",
        "DESC_DEFECT",
        "CONEQUENCE_DEFECT",
        "CORRECTIVE_ACTION",
        "NOTES",
        "RCL_CMPT_ID",
        "MFR_COMP_NAME",
        "MFR_COMP_DESC",
        "MFR_COMP_PTNO",
        "DO_NOT_DRIVE",
        "PARK_OUTSIDE",
    ];

    private readonly string[] fields =
    [
        "1",
        "26X-004",
        "TARNMOOR",
        "FELL 640",
        "2024",
        "TW-9",
        "FUEL TANK",
        "Tarnmoor Works",
        "20240115",
        "20240329",
        "V",
        "88",
        "20260701",
        "MFR",
        "Tarnmoor Works",
        "20260610",
        "20260612",
        "",
        "",
        "It leaks.",
        "It burns.",
        "Replace it.",
        "Ask them.",
        "1",
        "",
        "",
        "",
        "No",
        "Yes",
    ];

    public RowText With(string name, string text)
    {
        fields[Array.IndexOf(Names, name)] = text;
        return this;
    }

    public string Line(int count = 29) => string.Join('\t', fields.Take(count));

    public byte[] Bytes(int count = 29) => Encoding.UTF8.GetBytes(Line(count));
}
