using System.Net;
using Academy.Competence.People;
using Academy.Web.Access;

namespace Academy.Web.Tests.Hosting;

/// <summary>Signing in as people really do it: behind a link, with a name and a password.</summary>
internal static class Joining
{
    public const string Password = "seven kettles sing quietly";

    /// <summary>Uses a fresh link to choose "pim" (the person's name) and <see cref="Password"/>, and is signed in.</summary>
    public static async Task<Answer> JoinAsync(
        this Visitor visitor,
        PortalHost portal,
        Cast cast,
        Person person,
        bool ownDevice = true
    )
    {
        var link = await portal.DoAsync<Links, string>(links => links.MakeAsync(cast.Salon, person.Id));
        var joined = await visitor.SendAsync(
            link,
            ("Own.Name", person.Name),
            ("Own.Password", Password),
            ("Own.OwnDevice", ownDevice ? "true" : "false")
        );
        Assert.Equal(HttpStatusCode.Redirect, joined.Status);
        return joined;
    }

    /// <summary>Tries the cover's form.</summary>
    public static Task<Answer> SignInAsync(
        this Visitor visitor,
        string name,
        string password = Password,
        string path = "/sign-in"
    ) => visitor.SendAsync(path, ("Name", name), ("Password", password));
}
