using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Alumroot.Studio.Store;

/// <summary>The tables of the record, mapped by hand to their plain columns.</summary>
internal sealed class StudioContext(SqliteConnection connection) : DbContext(new DbContextOptionsBuilder<StudioContext>().UseSqlite(connection, contextOwnsConnection: true).Options)
{
    public DbSet<EntryRow> Entries => Set<EntryRow>();

    public DbSet<PhotoRow> Photos => Set<PhotoRow>();

    public DbSet<UseRow> Uses => Set<UseRow>();

    public DbSet<SubjectRow> Subjects => Set<SubjectRow>();

    public DbSet<AsideRow> Aside => Set<AsideRow>();

    protected override void OnConfiguring(DbContextOptionsBuilder optionsBuilder) =>
        optionsBuilder.UseQueryTrackingBehavior(QueryTrackingBehavior.NoTracking);

    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        modelBuilder.Entity<EntryRow>(e =>
        {
            e.ToTable("entry").HasKey(r => r.Sequence);
            e.Property(r => r.Sequence).HasColumnName("sequence").ValueGeneratedNever();
            e.Property(r => r.Id).HasColumnName("id");
            e.Property(r => r.Subject).HasColumnName("subject");
            e.Property(r => r.Document).HasColumnName("document");
            e.Property(r => r.DocumentVersion).HasColumnName("document_version");
            e.Property(r => r.PayloadJson).HasColumnName("payload_json");
            e.Property(r => r.AtUnixMs).HasColumnName("at_unix_ms");
            e.Property(r => r.AtZoneMinutes).HasColumnName("at_zone_minutes");
            e.Property(r => r.CorrectsId).HasColumnName("corrects_id");
            e.Property(r => r.Checksum).HasColumnName("checksum_sha256");
            e.Property(r => r.Chain).HasColumnName("chain_sha256");
        });
        modelBuilder.Entity<PhotoRow>(e =>
        {
            e.ToTable("entry_photo").HasKey(r => new { r.Sequence, r.Hash });
            e.Property(r => r.Sequence).HasColumnName("sequence");
            e.Property(r => r.Hash).HasColumnName("photo_sha256");
        });
        modelBuilder.Entity<UseRow>(e =>
        {
            e.ToTable("entry_use").HasKey(r => new { r.Lot, r.Sequence });
            e.Property(r => r.Sequence).HasColumnName("sequence");
            e.Property(r => r.Lot).HasColumnName("lot");
        });
        modelBuilder.Entity<SubjectRow>(e =>
        {
            e.ToTable("subject").HasKey(r => r.Subject);
            e.Property(r => r.Subject).HasColumnName("subject");
            e.Property(r => r.Class).HasColumnName("class");
            e.Property(r => r.Title).HasColumnName("title");
            e.Property(r => r.Stage).HasColumnName("stage");
            e.Property(r => r.FirstUnixMs).HasColumnName("first_unix_ms");
            e.Property(r => r.FirstZoneMinutes).HasColumnName("first_zone_minutes");
            e.Property(r => r.LastUnixMs).HasColumnName("last_unix_ms");
            e.Property(r => r.LastZoneMinutes).HasColumnName("last_zone_minutes");
            e.Property(r => r.EntryCount).HasColumnName("entry_count");
            e.Property(r => r.Projection).HasColumnName("projection");
            e.Property(r => r.Dyestuff).HasColumnName("dyestuff");
            e.Property(r => r.Salt).HasColumnName("salt");
            e.Property(r => r.PigmentKg).HasColumnName("pigment_kg");
            e.Property(r => r.DueUnixMs).HasColumnName("due_unix_ms");
            e.Property(r => r.DueZoneMinutes).HasColumnName("due_zone_minutes");
            e.Property(r => r.Tags).HasColumnName("tags");
            e.Property(r => r.SearchRow).HasColumnName("search_row");
        });
        modelBuilder.Entity<AsideRow>(e =>
        {
            e.ToTable("kept_aside").HasKey(r => new { r.Id, r.Checksum });
            e.Property(r => r.Id).HasColumnName("id");
            e.Property(r => r.Checksum).HasColumnName("checksum_sha256");
            e.Property(r => r.EntryJson).HasColumnName("entry_json");
            e.Property(r => r.AsideUnixMs).HasColumnName("aside_unix_ms");
        });
    }
}
