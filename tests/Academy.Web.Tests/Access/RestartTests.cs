using System.Net;
using Academy.Web.Shell;
using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Access;

public sealed class RestartTests
{
    [Fact]
    public async Task A_sign_in_and_a_form_that_was_open_outlive_a_restart()
    {
        var portal = new PortalHost { KeepsKeys = true };
        var cast = await portal.OpenSalonAsync();
        using var pim = await portal.AsAsync(cast, cast.Junior);
        var open = (await pim.GetAsync("/in-today")).Form().With(("In", cast.Junior.Id.Value.ToString()));

        await using var restarted = await portal.AgainAsync();
        using var later = restarted.Anyone();
        foreach (var (name, value) in pim.Cookies)
            later.Cookies[name] = value;
        var sent = await (open with { Visitor = later }).SendAsync();

        Assert.Equal(HttpStatusCode.Redirect, sent.Status);
        Assert.Equal("Pim is in", (await sent.FollowAsync()).Heading);
    }

    [Fact]
    public async Task A_second_portal_over_the_same_file_does_not_start_and_says_why()
    {
        await using var portal = new PortalHost();
        await portal.OpenSalonAsync();

        var (code, said) = await StartAsync(portal.Folder);

        Assert.Equal(NoStart.Taken, code);
        Assert.StartsWith(
            $"Another process already has the database {Path.Combine(portal.Folder, "academy.db")} open.",
            said,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task A_folder_that_cannot_be_written_is_said_with_its_name_and_the_setting()
    {
        var file = Path.GetTempFileName();
        var (code, said) = await StartAsync(Path.Combine(file, "data"));
        File.Delete(file);

        Assert.Equal(NoStart.CannotWrite, code);
        Assert.StartsWith($"The data folder {Path.Combine(file, "data")} cannot be written: ", said, StringComparison.Ordinal);
        Assert.EndsWith(
            "with the setting Data:Folder (or ACADEMY_Data__Folder in the environment).",
            said,
            StringComparison.Ordinal
        );
    }

    // The whole program in a process of its own, as somebody would start it.
    private static async Task<(int Code, string Said)> StartAsync(string folder)
    {
        var program = typeof(NoStart).Assembly.Location;
        var start = new System.Diagnostics.ProcessStartInfo("dotnet", [program, "--urls", "http://127.0.0.1:0"])
        {
            UseShellExecute = false,
            RedirectStandardError = true,
            RedirectStandardOutput = true,
            WorkingDirectory = Path.GetDirectoryName(program),
            Environment = { ["ACADEMY_Data__Folder"] = folder },
        };
        using var process = System.Diagnostics.Process.Start(start)!;
        var said = await process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return (process.ExitCode, said.Trim());
    }
}
