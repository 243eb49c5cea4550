// Each breaks one border on purpose, so that its rule can show that it bites. Nothing here is used.
#pragma warning disable CA1822, CA1051, CA1707, CA1711, CA1724, MA0069, CS0649, CA2211, CA5394
using Academy.Storage;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Microsoft.EntityFrameworkCore;

namespace Academy.Architecture.Tests.Planted
{
    namespace Competence
    {
        public sealed class LooksThingsUp(AcademyDb db)
        {
            public Task<int> CountAsync() => db.Set<object>().CountAsync();
        }

        public sealed class AsksLater
        {
            private static async ValueTask<int> LaterAsync()
            {
                await Task.Yield();
                return 1;
            }

            public static Task<int> Later => LaterAsync().AsTask();
        }

        public sealed record CanBeSet
        {
            public int Marks { get; set; }
        }

        public sealed class HasAnOpenField
        {
            public int Marks;
        }

        public sealed class AsksTheClock
        {
            public Func<int, int> Days(DateTime from) => add => (DateTime.UtcNow - from).Days + add;
        }

        public sealed class RollsDice
        {
            public IEnumerable<int> Roll()
            {
                yield return Random.Shared.Next();
            }
        }
    }

    namespace Storage
    {
        public sealed class AnswersARequest
        {
            public int Status(HttpContext http) => http.Response.StatusCode;
        }
    }

    namespace Web.Shell
    {
        public sealed class DecidesByItself
        {
            public IEnumerable<object> Decide()
            {
                yield return new Academy.Competence.OwnerOnly();
            }
        }

        public sealed class SavesByItself(AcademyDb db)
        {
            public async Task SaveAsync(CancellationToken stop)
            {
                await Task.Yield();
                await db.SaveChangesAsync(stop);
            }
        }

        public sealed class OpensTheFile
        {
            public object Open(string path) => Academy.Storage.Sqlite.DatabaseFile.Open(path);
        }
    }

    namespace Web.Wording
    {
        public static class SaysLittle
        {
            public static string Say(object said) =>
                said switch
                {
                    Academy.Competence.OwnerOnly => "Only the owner may do this.",
                    Academy.Competence.Standings.CoatFound => "A coat.",
                    _ => "",
                };
        }

        public sealed class PettingHelper;
    }

    namespace Web.Features.Petting
    {
        public sealed class PetModel(AcademyDb db) : PageModel
        {
            public Func<Task<int>> Count => () => db.Set<object>().CountAsync();
        }

        [Authorize(Policy = "Junoir")]
        public sealed class MisspeltModel : PageModel;

        [Authorize(Policy = Academy.Web.Access.Policies.Junior)]
        public sealed class GuardedModel : PageModel;

        [AllowAnonymous]
        public sealed class OpenModel : PageModel;

        public sealed class PetController : ControllerBase
        {
            [AllowAnonymous]
            public string Pet() => "";

            public string Stroke() => "";
        }

        public sealed class PetLookup
        {
            public bool IsThere(Academy.Storage.Rows.DogRow? row) => row is not null;
        }

        public sealed class Borrower
        {
            public object Borrow() => new Brushing.Brush();
        }

        public sealed class Features_Petting_Pet
        {
            public string Render(Academy.Competence.Standings.Standing standing) => standing.Kind.ToString();
        }
    }

    namespace Web.Features.Brushing
    {
        public sealed class Brush;
    }
}
