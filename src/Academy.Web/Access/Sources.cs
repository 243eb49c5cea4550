using System.Net;
using System.Net.Sockets;

namespace Academy.Web.Access;

/// <summary>Where a visitor comes from, as failed sign-ins are counted: one address, or one household of version 6.</summary>
public static class Sources
{
    private const int HouseholdBytes = 8;

    public static string Of(HttpContext http) => http.Connection.RemoteIpAddress is { } address ? Of(address) : "nowhere";

    public static string Of(IPAddress address)
    {
        if (address.IsIPv4MappedToIPv6)
            return address.MapToIPv4().ToString();
        if (address.AddressFamily != AddressFamily.InterNetworkV6)
            return address.ToString();
        // One household gets a whole range of addresses and may use a new one for each try.
        byte[] household = [.. address.GetAddressBytes().Take(HouseholdBytes), .. new byte[HouseholdBytes]];
        return new IPAddress(household) + "/64";
    }
}
