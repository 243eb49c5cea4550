using Academy.Web.Access;

namespace Academy.Web.Tests.Access;

/// <summary>
/// The salon's own steps, under the 100 failures in a row that NIST SP 800-63B-4 (3.2.2) allows for one account.
/// </summary>
public sealed class PatienceTests
{
    // failures in a row | wait in seconds before the next try
    [Theory]
    [InlineData(0, 0)]
    [InlineData(4, 0)] // the fifth try is free
    [InlineData(5, 30)] // the sixth waits
    [InlineData(6, 60)]
    [InlineData(7, 120)]
    [InlineData(9, 480)]
    [InlineData(10, 900)] // never longer than a quarter of an hour
    [InlineData(49, 900)]
    public void The_wait_doubles_from_half_a_minute_to_a_quarter_of_an_hour(int failures, int seconds) =>
        Assert.Equal(TimeSpan.FromSeconds(seconds), Patience.After(failures));

    [Theory]
    [InlineData(29, 1)]
    [InlineData(30, 0)] // half-open: at the end of the wait the next try is free
    [InlineData(3600, 0)]
    public void What_is_left_of_a_wait_runs_from_the_last_failure(int passed, int left)
    {
        var last = new DateTimeOffset(2026, 6, 10, 8, 0, 0, TimeSpan.Zero);

        Assert.Equal(TimeSpan.FromSeconds(left), Patience.Left(5, last, last.AddSeconds(passed)));
    }

    [Fact]
    public void Fewer_tries_than_NIST_allows_are_free_until_the_owner_is_asked() => Assert.InRange(Patience.StopsAt, 1, 100);

    [Theory]
    [InlineData(1, "1 second")]
    [InlineData(60, "60 seconds")]
    [InlineData(61, "2 minutes")]
    [InlineData(900, "15 minutes")]
    public void A_wait_is_said_in_words_and_never_too_short(int seconds, string words) =>
        Assert.Equal(words, Entrance.Words(TimeSpan.FromSeconds(seconds)));
}
