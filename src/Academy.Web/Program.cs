using Academy.Web.Shell;

var builder = WebApplication.CreateBuilder(args);
#pragma warning disable RS0030 // The one place that names the system clock; everything else is handed a TimeProvider.
builder.Services.AddSingleton(TimeProvider.System);
#pragma warning restore RS0030
builder.AddAcademyShell();

var app = builder.Build();
app.UseAcademyShell();
app.MapAcademyShell();
app.Run();

/// <summary>The program, named so that tests can start it.</summary>
public partial class Program;
