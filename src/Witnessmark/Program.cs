using System.CommandLine;
using System.Text;
using Witnessmark.Backups;
using Witnessmark.Book;
using Witnessmark.Calc;
using Witnessmark.Campaigns;
using Witnessmark.Certificates;
using Witnessmark.Day;
using Witnessmark.Doctor;
using Witnessmark.Doors;
using Witnessmark.Estimates;
using Witnessmark.Groups;
using Witnessmark.Judge;
using Witnessmark.Keys;
using Witnessmark.LogBooks;
using Witnessmark.Machines;
using Witnessmark.Papers;
using Witnessmark.Planning;
using Witnessmark.Serve;
using Witnessmark.Sheets;
using Witnessmark.Stock;
using Witnessmark.Times;
using Witnessmark.Verify;

Console.OutputEncoding = Encoding.UTF8;
if (Ask.WithOptions(args))
    return Ask.Run(args[1], args[2..]);
var root = new RootCommand("Witnessmark: the bench-side tool of a motorcycle workshop technician.")
{
    BackupCommand.Create(),
    BookCommand.Create(),
    CalcCommand.Create(),
    CampaignsCommand.Create(),
    CertificateCommand.Create(),
    DayCommand.Create(),
    DoctorCommand.Create(),
    DoorCommand.Create(),
    EstimateCommand.Create(),
    GroupCommand.Create(),
    JudgeCommand.Create(),
    KeyCommand.Create(),
    LabelCommand.Create(),
    LogBookCommand.Create(),
    MachinesCommand.Create(),
    MigrateCommand.Create(),
    PlanCommand.Create(),
    RecordCommand.Create(),
    RestoreCommand.Create(),
    ServeCommand.Create(),
    SheetsCommand.Create(),
    StockCommand.Create(),
    TimesCommand.Create(),
    VerifyCommand.Create(),
};
var parsed = root.Parse(args);
var ended = parsed.Invoke();
return parsed.Errors.Count > 0 ? ExitCode.Malformed : ended;
