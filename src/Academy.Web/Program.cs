using Academy.Web.Access;
using Academy.Web.Commands;
using Academy.Web.Demo;
using Academy.Web.Features.Boards;
using Academy.Web.Features.Calendars;
using Academy.Web.Features.Ledgers;
using Academy.Web.Library;
using Academy.Web.Shell;

args = Arguments.Spelled(args);
var settings = Command.IsIn(args) ? Arguments.Settings(args) : args;
var builder = WebApplication.CreateBuilder(settings);
builder.Configuration.AddEnvironmentVariables("ACADEMY_").AddCommandLine(settings);
if (Command.IsIn(args))
    return await Command.RunAsync(args, builder.Configuration, builder.Environment, Console.Out, CancellationToken.None);

#pragma warning disable RS0030 // The one place that names the system clock; everything else is handed a TimeProvider.
builder.Services.AddSingleton(TimeProvider.System);
#pragma warning restore RS0030
builder.AddAcademyShell();
builder.AddAcademyAccess();
builder.AddAcademyModules();
builder.Services.AddBoards().AddLedgerPage();
if (builder.AddAcademyStorage() is { } reason)
{
    await Console.Error.WriteLineAsync(reason.Sentence);
    return reason.ExitCode;
}

var app = builder.Build();
app.UseAcademyShell();
app.UseAcademyModules();
app.UseAcademyAccess();
app.UseShelves();
app.MapAcademyShell();
app.MapAcademyModules();
app.MapCalendars();
await app.MigrateAcademyAsync();
await app.FillDemoAsync();
await app.OpenLibraryAsync();
await app.AnnounceAsync();
await app.RunAsync();
return 0;

/// <summary>The program, named so that tests can start it.</summary>
public partial class Program;
