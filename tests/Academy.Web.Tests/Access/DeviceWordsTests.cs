using Academy.Web.Access;

namespace Academy.Web.Tests.Access;

public sealed class DeviceWordsTests
{
    [Theory]
    [InlineData("Mozilla/5.0 (Android 15; Mobile; rv:140.0) Gecko/140.0 Firefox/140.0", "Firefox on Android")]
    [InlineData(
        "Mozilla/5.0 (iPhone; CPU iPhone OS 18_5 like Mac OS X) AppleWebKit/605.1.15 (KHTML, like Gecko) Version/18.5 Mobile/15E148 Safari/604.1",
        "Safari on iPhone"
    )]
    [InlineData(
        "Mozilla/5.0 (Windows NT 10.0; Win64; x64) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/140.0.0.0 Safari/537.36 Edg/140.0.0.0",
        "Edge on Windows"
    )]
    [InlineData("<script>alert(1)</script>", "a browser on some device")] // nothing that anybody typed gets into the ledger
    [InlineData(null, "a browser on some device")]
    public void A_device_is_called_by_a_few_fixed_words(string? agent, string words) =>
        Assert.Equal(words, DeviceWords.Of(agent));
}
