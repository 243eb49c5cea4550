using Academy.Competence;
using Academy.Competence.Facts;
using Academy.Storage;
using Academy.Storage.Ledgers;
using Microsoft.EntityFrameworkCore;

namespace Academy.Web.Features.Welcome;

/// <summary>How far the first things of a salon are done.</summary>
public sealed class WelcomeQueries(AcademyDb db)
{
    private static readonly string Declared = FactForms.CodeOf<ExperienceDeclared>();

    public Task<int> DogsAsync(SalonId salon, CancellationToken stop) =>
        db.Dogs.CountAsync(dog => dog.SalonId == salon.Value && !dog.IsGone, stop);

    public Task<int> DeclarationsAsync(SalonId salon, CancellationToken stop) =>
        db.Ledger.CountAsync(fact => fact.SalonId == salon.Value && fact.Kind == Declared, stop);
}
