namespace Academy.Web.Tests.Hosting;

/// <summary>Keeps cookies by name, whatever the machine's clock says: the portal's clock is the test's.</summary>
internal sealed class CookieJar(params IEnumerable<(string Name, string Value)> cookies) : DelegatingHandler
{
    public Dictionary<string, string> Cookies { get; } =
        cookies.ToDictionary(one => one.Name, one => one.Value, StringComparer.Ordinal);

    protected override async Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
    {
        if (Cookies.Count > 0)
            request.Headers.Add("Cookie", string.Join("; ", Cookies.Select(one => $"{one.Key}={one.Value}")));
        var answer = await base.SendAsync(request, cancellationToken);
        foreach (var cookie in answer.Headers.TryGetValues("Set-Cookie", out var set) ? set : [])
            Put(cookie.Split(';')[0].Split('=', 2));
        return answer;
    }

    private void Put(string[] cookie)
    {
        if (cookie[1].Length == 0)
            Cookies.Remove(cookie[0]);
        else
            Cookies[cookie[0]] = cookie[1];
    }
}
