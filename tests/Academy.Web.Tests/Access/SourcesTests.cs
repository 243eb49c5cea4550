using System.Net;
using Academy.Web.Access;

namespace Academy.Web.Tests.Access;

public sealed class SourcesTests
{
    // Addresses of the ranges kept for documentation: RFC 5737 and RFC 3849.
    [Theory]
    [InlineData("192.0.2.7", "192.0.2.7")]
    [InlineData("::ffff:192.0.2.7", "192.0.2.7")]
    [InlineData("2001:db8:1:2:3:4:5:6", "2001:db8:1:2::/64")]
    [InlineData("2001:db8:1:2:ffff:4:5:6", "2001:db8:1:2::/64")] // one household, however many addresses it uses
    [InlineData("2001:db8:1:3:3:4:5:6", "2001:db8:1:3::/64")]
    public void A_source_is_one_address_or_one_household_of_version_6(string address, string source) =>
        Assert.Equal(source, Sources.Of(IPAddress.Parse(address)));
}
