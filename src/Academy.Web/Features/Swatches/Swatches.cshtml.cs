using System.ComponentModel.DataAnnotations;
using Academy.Web.Features.Shared;
using Academy.Web.Shell;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace Academy.Web.Features.Swatches;

/// <summary>Every part of the look on one page, for those who build with it. Only in development and in the demo.</summary>
[AllowAnonymous]
public sealed class SwatchesModel(Site site) : AcademyPage
{
    public static readonly string[] Coats = ["smooth", "double", "wire", "silky", "wool", "combination", "hairless", "corded"];
    public static readonly string[] Standings = ["learning", "ready", "alone", "check-again", "lapsed", "stood-down"];
    public static readonly (string Name, string Seat)[] People =
    [
        ("Rosa Marlowe", "senior"),
        ("Dora Quennell", "senior"),
        ("Pim Hollis", "junior, 8 months"),
        ("Oluwaseun Adebayo-Featherstonehaugh", "junior, 11 months"),
    ];
    public static readonly Pick[] CoatPicks = [.. Coats.Select(coat => new Pick(coat, coat, Coat: coat))];
    public static readonly Pick[] Seen = [new("met", "met"), new("not-yet", "not yet"), new("not-seen", "not seen")];
    public static readonly Pick[] HazardPicks =
    [
        .. new[] { "flat-faced", "elderly", "heart condition", "heavy coat", "overweight", "matted" }.Select(hazard => new Pick(
            hazard,
            hazard
        )),
    ];
    public static readonly Pick[] Levels = [.. Say.Levels.Select(level => level with { Value = level.Number! })];
    public static readonly Dot[] None = [];
    public static readonly Dot[] Rated =
    [
        .. Enumerable
            .Range(1, 20)
            .Select(day => new Dot(day % 9 == 4 ? DotVerdict.NeededFixing : DotVerdict.Suited, $"{day} Apr", "#rated")),
    ];

    [
        BindProperty,
        Required(ErrorMessage = "Name: write what the dog is called"),
        StringLength(80, ErrorMessage = "Name: at most 80 letters")
    ]
    public string? Dog { get; set; }

    [BindProperty, Range(0.5, 120, ErrorMessage = "Weight: between 0.5 and 120 kg")]
    public decimal? Weight { get; set; }

    [BindProperty]
    public DateOnly? Born { get; set; }

    [BindProperty, Required(ErrorMessage = "Coat: choose the one you see on the table")]
    public string? Coat { get; set; }

    [BindProperty]
    public int? Level { get; set; }

    [BindProperty]
    public string? Skin { get; set; }

    [BindProperty]
    public string? Comfort { get; set; }

    [BindProperty]
    public IReadOnlyList<string> Hazards { get; set; } = [];

    [BindProperty]
    public string? Words { get; set; }

    /// <summary>The seat from which the frame is looked at: <c>junior</c>, <c>senior</c>, <c>owner</c>.</summary>
    [BindProperty(SupportsGet = true)]
    public Seat As { get; set; }

    [BindProperty(SupportsGet = true)]
    public string? Shape { get; set; }

    public IActionResult OnGet() => site.ShowsParts ? Framed() : NotFound();

    public IActionResult OnPost() =>
        !site.ShowsParts ? NotFound()
        : !ModelState.IsValid ? FramedAgain()
        : Done($"/swatches?as={As}", $"{Dog} would be kept. This page keeps nothing.");

    private PageResult FramedAgain()
    {
        Framed();
        return Again();
    }

    private PageResult Framed()
    {
        if (As is not Seat.Nobody)
        {
            var warm = new ReadingLine(
                "25.5 °C, 61 %, table room",
                "13:40, 25 minutes ago",
                "Hot day for at-risk dogs: their limit is 24 °C.",
                Hot: true
            );
            HttpContext.Features.Set(
                new PageFrame(
                    "Wilhelmina Oduya-Castellan",
                    As,
                    "Harbour Lane",
                    warm,
                    "An invented salon. Nothing here reaches a real dog."
                )
            );
        }

        return Page();
    }
}
