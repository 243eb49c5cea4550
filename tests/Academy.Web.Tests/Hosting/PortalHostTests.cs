using System.Net;
using Academy.Competence;
using Academy.Storage;

namespace Academy.Web.Tests.Hosting;

/// <summary>The test host itself: what every other test of the portal stands on.</summary>
public sealed class PortalHostTests
{
    [Fact]
    public async Task A_salon_opens_with_its_cast_and_each_of_them_can_be_signed_in()
    {
        await using var portal = new PortalHost();
        var cast = await portal.OpenSalonAsync();
        await portal.DeclareAsync(cast, cast.Senior, "wool", "bath");

        var book = await portal.DoAsync<RecordBook, Competence.Salons.SalonBook>(records =>
            records.SalonAsync(cast.Salon, TestContext.Current.CancellationToken)
        );
        Assert.Equal(cast.Everybody, book.People);
        foreach (var person in cast.Everybody)
        {
            using var visitor = await portal.AsAsync(cast, person);
            Assert.Equal(HttpStatusCode.OK, (await visitor.GetAsync("/heat")).Status);
        }
    }

    [Fact]
    public async Task A_form_is_opened_filled_in_and_sent()
    {
        await using var portal = new PortalHost().With("Demo", "true");
        using var visitor = portal.Anyone();
        var sent = await visitor.SendAsync("/swatches", ("Dog", "Biscuit"), ("Coat", "wool"));

        Assert.Equal(HttpStatusCode.Redirect, sent.Status);
        Assert.Equal("Biscuit would be kept. This page keeps nothing.", (await sent.FollowAsync()).Said);
        Assert.Equal(
            ["Name: write what the dog is called"],
            (await visitor.SendAsync("/swatches", ("Dog", ""), ("Coat", "wool"))).Problems
        );
    }
}
