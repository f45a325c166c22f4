using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;

namespace Witnessmark.Ledger;

/// <summary>The one model; each database has its own context.</summary>
public abstract class LedgerContext(DbContextOptions options) : DbContext(options)
{
    public DbSet<KeptEntry> Entries => Set<KeptEntry>();
    public DbSet<SetAside> Aside => Set<SetAside>();
    public DbSet<JobHead> Jobs => Set<JobHead>();
    public DbSet<LedgerIdentity> Identity => Set<LedgerIdentity>();

    /// <summary>Whether the one writer keeps its connection from batch to batch; where the store may be on another computer by then, it does not.</summary>
    public virtual bool StaysOpen => false;

    /// <summary>Whether what it has open is not what lies in its place any more.</summary>
    public virtual bool WasMoved => false;

    /// <summary>Closes what is open and in nobody's use.</summary>
    public virtual void CloseUnused() { }

    /// <summary>From here on nobody else writes, until it is committed or given up.</summary>
    public virtual IDbContextTransaction BeginWriting() => Database.BeginTransaction();

    /// <summary>When this returns, all that was written is kept.</summary>
    /// <exception cref="LedgerUnavailable">It may be kept or not: whoever sent it sends it again.</exception>
    public virtual void Keep(IDbContextTransaction written) => written.Commit();

    /// <inheritdoc />
    protected override void OnModelCreating(ModelBuilder model)
    {
        model.Entity<KeptEntry>(entries =>
        {
            entries.ToTable("entries").HasKey(e => e.Order);
            entries.Property(e => e.Order).ValueGeneratedNever();
            entries.HasIndex(e => e.Id).IsUnique();
            entries
                .HasIndex(e => new
                {
                    e.Device,
                    e.Epoch,
                    e.Seq,
                })
                .IsUnique();
            entries.HasIndex(e => new { e.Job, e.Order });
        });
        model.Entity<SetAside>(aside =>
        {
            aside.ToTable("set_aside").HasKey(a => a.Number);
            aside.Property(a => a.Reason).HasConversion<string>();
            aside.HasIndex(a => a.TextHash).IsUnique();
            aside.HasIndex(a => new
            {
                a.Device,
                a.Epoch,
                a.Seq,
            });
        });
        model.Entity<JobHead>().ToTable("job_heads").HasKey(j => j.Job);
        model.Entity<LedgerIdentity>(identity =>
        {
            identity.ToTable("ledger_identity").HasKey(i => i.Row);
            identity.Property(i => i.Row).ValueGeneratedNever();
        });
    }
}
