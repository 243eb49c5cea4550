using System.Xml.Linq;
using Microsoft.AspNetCore.DataProtection.EntityFrameworkCore;
using Microsoft.AspNetCore.DataProtection.Repositories;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace Academy.Storage.Accounts;

/// <summary>
/// The keys that forms are sealed with, beside everything else, so that a form opened before a restart can be sent after it.
/// </summary>
/// <remarks>
/// The framework asks without awaiting, when the portal starts and every few months; the writer's turn is waited for here. Never
/// ask from inside a write of one's own.
/// </remarks>
public sealed class KeyRing(IServiceScopeFactory scopes) : IXmlRepository
{
    public IReadOnlyCollection<XElement> GetAllElements()
    {
        using var scope = scopes.CreateScope();
        var written = Db(scope).DataProtectionKeys.AsNoTracking().OrderBy(key => key.Id).Select(key => key.Xml).ToList();
        return [.. written.OfType<string>().Select(XElement.Parse)];
    }

    public void StoreElement(XElement element, string friendlyName)
    {
        using var scope = scopes.CreateScope();
        var db = Db(scope);
        var xml = element.ToString(SaveOptions.DisableFormatting);
        db.DataProtectionKeys.Add(new DataProtectionKey { FriendlyName = friendlyName, Xml = xml });
        db.SaveChangesAsync().GetAwaiter().GetResult();
    }

    private static AcademyDb Db(IServiceScope scope) => scope.ServiceProvider.GetRequiredService<AcademyDb>();
}
