namespace Academy.Web.Features.Shared;

/// <summary>Where the pages that the index names are. Each page says the same address in its <c>@page</c>.</summary>
public static class Paths
{
    public const string Today = "/";
    public const string Study = "/study";
    public const string LogGroom = "/grooms/log";
    public const string MySkills = "/my-skills";
    public const string Board = "/board";
    public const string SignOffs = "/sign-offs";
    public const string DogCheck = "/dog-check";
    public const string Decide = "/decide";
    public const string People = "/people";
    public const string Dogs = "/dogs";
    public const string Thresholds = "/thresholds";
    public const string Ledger = "/ledger";
    public const string Reading = "/reading";
    public const string Heat = "/heat";
    public const string SignIn = "/sign-in";
    public const string SignOut = "/sign-out";
}
