using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;

namespace Academy.Storage.Accounts;

internal static class AccountTables
{
    private const int LongestCredentialId = 1024;

    public static void Shape(ModelBuilder builder)
    {
        ShapeAccounts(builder);
        ShapePasskeys(builder);
        ShapeSessions(builder);
    }

    private static void ShapeAccounts(ModelBuilder builder)
    {
        builder.Entity<Account>(account =>
        {
            account.ToTable("accounts");
            account.HasIndex(one => new { one.SalonId, one.PersonId });
        });
        builder.Entity<IdentityUserClaim<Guid>>().ToTable("account_claims");
        builder.Entity<IdentityUserLogin<Guid>>().ToTable("account_logins");
        builder.Entity<IdentityUserToken<Guid>>().ToTable("account_tokens");
    }

    // Identity leaves this table out unless an option of the application says otherwise; a model must not depend on that.
    private static void ShapePasskeys(ModelBuilder builder)
    {
        builder.Entity<IdentityUserPasskey<Guid>>(passkey =>
        {
            passkey.ToTable("account_passkeys");
            passkey.HasKey(one => one.CredentialId);
            passkey.Property(one => one.CredentialId).HasMaxLength(LongestCredentialId);
            passkey.OwnsOne(one => one.Data).ToJson("data");
            passkey.HasOne<Account>().WithMany().HasForeignKey(one => one.UserId).IsRequired();
        });
    }

    private static void ShapeSessions(ModelBuilder builder)
    {
        builder.Entity<Session>(session =>
        {
            session.ToTable("sessions");
            session.HasKey(one => one.Key);
            session.HasIndex(one => one.AccountId);
            session.HasIndex(one => one.ExpiresAt);
            session.HasOne<Account>().WithMany().HasForeignKey(one => one.AccountId);
        });
        builder.Entity<Device>(device =>
        {
            device.ToTable("devices");
            device.HasKey(one => new { one.SalonId, one.Id });
        });
        builder
            .Entity<Microsoft.AspNetCore.DataProtection.EntityFrameworkCore.DataProtectionKey>()
            .ToTable("data_protection_keys");
    }
}
