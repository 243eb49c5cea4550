using System.Text.RegularExpressions;
using Academy.Architecture.Tests.Planted.Web.Features.Petting;

namespace Academy.Architecture.Tests;

/// <summary>Views show what they are handed: no rule, no row, nothing asked for, nothing that the content policy would refuse.</summary>
public partial class ViewsTests
{
    private static readonly Border<Part> s_viewsHoldPlainValues = new(
        part => part.IsView,
        part =>
            part.Uses.Where(use =>
                    Text.IsOrIsBelow(use.Type, "Academy.Competence") || Text.IsOrIsBelow(use.Type, "Academy.Storage")
                )
                .Select(use => $"{part} uses {use.Type}: put a plain value into its view record")
    );

    private static readonly Border<Source> s_viewsNameNoOtherRoom = Against(OtherRooms(), "names another room");
    private static readonly Border<Source> s_viewsAskForNothing = Against(Asking(), "asks for a service");
    private static readonly Border<Source> s_viewsHoldNoScript = Against(
        Inline(),
        "has a style, a handler or a script of its own"
    );

    public static TheoryData<string> WithScript =>
        [
            "<p style=\"color:red\">",
            "<style>p { }</style>",
            "<button onclick=\"pet()\">",
            "<body OnLoad='pet()'>",
            "<script>pet()</script>",
            "<script type=\"module\">pet()</script>",
            "<a href=\"javascript:pet()\">",
        ];

    [Fact]
    public void Views_are_handed_plain_values()
    {
        s_viewsHoldPlainValues.Holds(House.Parts, atLeast: 8);
        s_viewsHoldPlainValues.Catches(House.Planted<Features_Petting_Pet>());
    }

    [Fact]
    public void Views_name_no_other_room()
    {
        s_viewsNameNoOtherRoom.Holds(Views(), atLeast: 8);
        s_viewsNameNoOtherRoom.Catches(View("@using Academy.Competence.Standings"));
        s_viewsNameNoOtherRoom.Catches(View("@foreach (var row in Academy.Storage.Rows.All)"));
    }

    [Fact]
    public void Views_ask_for_nothing()
    {
        s_viewsAskForNothing.Holds(Views(), atLeast: 8);
        s_viewsAskForNothing.Catches(View("@inject RecordBook Book"));
        s_viewsAskForNothing.Catches(View("@Context.RequestServices.GetService<RecordBook>()"));
    }

    [Fact]
    public void Views_hold_no_style_no_handler_and_no_script() => s_viewsHoldNoScript.Holds(Views(), atLeast: 8);

    [Theory]
    [MemberData(nameof(WithScript))]
    public void What_the_content_policy_refuses_is_caught_before_a_browser_does(string planted) =>
        s_viewsHoldNoScript.Catches(View(planted));

    [Theory]
    [InlineData("<script src=\"~/shell.js\" defer></script>")]
    [InlineData("<link rel=\"stylesheet\" href=\"~/academy.css\">")]
    [InlineData("<p class=\"on\" data-only=\"x\">once upon = a time</p>")]
    public void What_it_allows_is_allowed(string fine) => s_viewsHoldNoScript.Allows(View(fine));

    private static IEnumerable<Source> Views() => Text.Files(".cshtml");

    private static Source View(string text) => new("src/Academy.Web/Features/Petting/Pet.cshtml", text);

    private static Border<Source> Against(Regex unwanted, string what) =>
        new(_ => true, source => unwanted.Matches(source.Text).Select(found => $"{source.Path} {what}: {found.Value.Trim()}"));

    [GeneratedRegex(
        @"\bAcademy\.(Competence|Storage)\b|\busing (Competence|Storage)\b",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture
    )]
    private static partial Regex OtherRooms();

    [GeneratedRegex(
        @"^\s*@inject\b|\bRequestServices\b|\bGet(Required)?Service\b",
        RegexOptions.CultureInvariant | RegexOptions.Multiline | RegexOptions.ExplicitCapture
    )]
    private static partial Regex Asking();

    [GeneratedRegex(
        @"<[^>]*\sstyle\s*=|<style\b|<[a-z][^>]*\son[a-z]+\s*=|<script\b(?![^>]*\bsrc\s*=)|javascript:",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase
    )]
    private static partial Regex Inline();
}
