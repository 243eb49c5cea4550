using System.Net;
using Academy.Competence.Grooms;
using Academy.Storage;
using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Features.Readings;

public sealed class ReadTests
{
    [Fact]
    public async Task A_reading_with_a_comma_is_kept_once_however_often_it_is_sent()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        using var pim = await portal.AsAsync(cast, cast.Junior);
        var form = (await pim.GetAsync("/readings/new")).Form().With(("Temperature", "24,5 °C"), ("Humidity", "61"));

        var first = await form.SendAsync();
        var second = await form.SendAsync();

        Assert.Equal(HttpStatusCode.Redirect, first.Status);
        Assert.Equal(HttpStatusCode.Redirect, second.Status);
        var newest = await portal.DoAsync<RecordBook, RoomReading?>(book =>
            book.NewestReadingAsync(cast.Salon, portal.Now, default)
        );
        Assert.Equal(new RoomReading(portal.Now, 245, 61), newest);
        Assert.Equal("24.5 °C is in the book.", (await first.FollowAsync()).Said);
        portal.Dispose();
    }

    [Fact]
    public async Task What_cannot_be_read_is_kept_in_the_form_with_what_to_write()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        using var pim = await portal.AsAsync(cast, cast.Junior);

        var answer = await pim.SendAsync("/readings/new", ("Temperature", "warm"), ("Humidity", "wet"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Equal(
            [
                "Write the temperature in degrees Celsius, such as 22.5.",
                "Write the humidity in percent, such as 61, or leave it empty.",
            ],
            answer.Problems
        );
        Assert.Equal("warm", answer.Form()["Temperature"]);
        portal.Dispose();
    }

    [Fact]
    public async Task No_room_is_seventy_degrees()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        using var pim = await portal.AsAsync(cast, cast.Junior);

        var answer = await pim.SendAsync("/readings/new", ("Temperature", "70"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Single(answer.Problems);
        portal.Dispose();
    }
}
