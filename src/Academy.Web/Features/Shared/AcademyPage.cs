using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace Academy.Web.Features.Shared;

/// <summary>What pages have in common: the three ways in which a form is answered.</summary>
public abstract class AcademyPage : PageModel
{
    /// <summary>The page again with everything typed kept, because the form or the rules said no.</summary>
    protected PageResult Again() => PageWith(StatusCodes.Status422UnprocessableEntity);

    /// <summary>The page again with each sentence on top, because the rules said no.</summary>
    protected PageResult Again(IEnumerable<string> sentences)
    {
        foreach (var sentence in sentences)
        {
            ModelState.AddModelError("", sentence);
        }

        return Again();
    }

    /// <summary>The page again with what is there now, because someone wrote in between.</summary>
    protected PageResult MovedOn() => PageWith(StatusCodes.Status409Conflict);

    /// <summary>On to another page, with a sentence that says what was done.</summary>
    protected LocalRedirectResult Done(string path, string sentence)
    {
        TempData["Said"] = sentence;
        return LocalRedirect(path);
    }

    private PageResult PageWith(int status)
    {
        Response.StatusCode = status;
        return Page();
    }
}
