using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Tickover.Workshop.Logs;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Model;

/// <summary>The tables of a record. One model; each kind of database has its own migrations, held by its own context.</summary>
/// <param name="options">Which database.</param>
internal abstract class RecordsContext(DbContextOptions options) : DbContext(options)
{
    /// <summary>The acts: the journal, and the order of everything.</summary>
    public DbSet<ActRow> Acts => Set<ActRow>();

    /// <summary>What each act did to each item.</summary>
    public DbSet<ChangeRow> Changes => Set<ChangeRow>();

    /// <summary>Words to search in.</summary>
    public DbSet<SearchRow> Search => Set<SearchRow>();

    /// <summary>The pictures of photographs.</summary>
    public DbSet<PictureRow> Pictures => Set<PictureRow>();

    /// <summary>PINs, hashed.</summary>
    public DbSet<PinRow> Pins => Set<PinRow>();

    /// <summary>What makes this database a record of ours, and which one.</summary>
    public DbSet<StampRow> Stamps => Set<StampRow>();

    /// <inheritdoc/>
    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder)
    {
        foreach (var kind in RecordKinds.All)
        {
            configurationBuilder.Properties(typeof(Id<>).MakeGenericType(kind)).HaveConversion(typeof(IdConverter<>).MakeGenericType(kind));
        }

        configurationBuilder.Properties<Enum>().HaveConversion<string>();
        configurationBuilder.Properties<Place>().HaveConversion<PlaceConverter>();
        configurationBuilder.Properties<IReadOnlyList<PhotographMark>>().HaveConversion<JsonColumn<IReadOnlyList<PhotographMark>>, JsonColumnComparer<IReadOnlyList<PhotographMark>>>();
        configurationBuilder.Properties<IReadOnlyList<MixturePoint>>().HaveConversion<JsonColumn<IReadOnlyList<MixturePoint>>, JsonColumnComparer<IReadOnlyList<MixturePoint>>>();
        configurationBuilder.Properties<IReadOnlyList<FittedPart>>().HaveConversion<JsonColumn<IReadOnlyList<FittedPart>>, JsonColumnComparer<IReadOnlyList<FittedPart>>>();
        configurationBuilder.Properties<IReadOnlyList<ExpectedRegime>>().HaveConversion<JsonColumn<IReadOnlyList<ExpectedRegime>>, JsonColumnComparer<IReadOnlyList<ExpectedRegime>>>();
        configurationBuilder.Properties<LogSheet>().HaveConversion<JsonColumn<LogSheet>, JsonColumnComparer<LogSheet>>();
        configurationBuilder.Properties<IReadOnlyDictionary<string, string>>()
            .HaveConversion<JsonColumn<IReadOnlyDictionary<string, string>>, JsonColumnComparer<IReadOnlyDictionary<string, string>>>();
    }

    /// <inheritdoc/>
    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        foreach (var kind in RecordKinds.All)
        {
            Item(modelBuilder.Entity(kind));
        }

        modelBuilder.Entity<House>().Property(h => h.OwnAuthorities);
        modelBuilder.Entity<Photograph>().Property(p => p.Marks);
        modelBuilder.Entity<RoadRun>().Property(r => r.Points);
        modelBuilder.Entity<JetFitting>().Property(f => f.Parts);
        modelBuilder.Entity<JetFitting>().Property(f => f.Expected);
        modelBuilder.Entity<RoadRun>().Property(r => r.Sheet);
        modelBuilder.Entity<StockJet>().HasIndex(s => new { s.Part, s.Size }).IsUnique();
        References(modelBuilder);
        Journal(modelBuilder);
        modelBuilder.Entity<SearchRow>().HasKey(s => new { s.Kind, s.Key });
        modelBuilder.Entity<PictureRow>().HasKey(p => p.Photograph);
        modelBuilder.Entity<PictureRow>().Property(p => p.Photograph).ValueGeneratedNever();
        modelBuilder.Entity<PinRow>().HasKey(p => p.Person);
        modelBuilder.Entity<PinRow>().Property(p => p.Person).ValueGeneratedNever();
        modelBuilder.Entity<StampRow>().HasKey(s => s.Record);
        modelBuilder.Entity<StampRow>().Property(s => s.Record).ValueGeneratedNever();
    }

    private static void Item(EntityTypeBuilder item)
    {
        item.ToTable(item.Metadata.ClrType.Name);
        item.HasKey("Id");
        item.Property("Id").ValueGeneratedNever();
        item.Ignore(nameof(RecordItem.Key));
        item.Property(nameof(RecordItem.Version)).IsConcurrencyToken();
        item.HasIndex(nameof(RecordItem.Kept));
        if (item.Metadata.ClrType.IsAssignableTo(typeof(IOfVisit)))
        {
            item.Property(nameof(IOfVisit.Visit));
            item.HasOne(typeof(Visit)).WithMany().HasForeignKey(nameof(IOfVisit.Visit)).OnDelete(DeleteBehavior.Restrict);
        }
    }

    private static void References(ModelBuilder model)
    {
        model.Entity<CustomerCar>().HasIndex(c => c.Slug).IsUnique();
        model.Entity<CustomerCar>().HasOne<Owner>().WithMany().HasForeignKey(c => c.Owner).OnDelete(DeleteBehavior.Restrict);
        model.Entity<Visit>().HasOne<CustomerCar>().WithMany().HasForeignKey(v => v.Car).OnDelete(DeleteBehavior.Restrict);
        model.Entity<Visit>().HasOne<Owner>().WithMany().HasForeignKey(v => v.Owner).OnDelete(DeleteBehavior.Restrict);
        model.Entity<CarDescription>().HasOne<CustomerCar>().WithMany().HasForeignKey(d => d.Car).OnDelete(DeleteBehavior.Restrict);
        model.Entity<Component>().HasOne<CustomerCar>().WithMany().HasForeignKey(c => c.Car).OnDelete(DeleteBehavior.Restrict);
        model.Entity<Reading>().HasOne<Instrument>().WithMany().HasForeignKey(r => r.Instrument).OnDelete(DeleteBehavior.Restrict);
        model.Entity<Photograph>().HasOne<Finding>().WithMany().HasForeignKey(p => p.Finding).OnDelete(DeleteBehavior.Restrict);
        model.Entity<JetFitting>().HasOne<CarDescription>().WithMany().HasForeignKey(f => f.Description).OnDelete(DeleteBehavior.Restrict);
        model.Entity<SignOff>().HasOne<Person>().WithMany().HasForeignKey(s => s.Person).OnDelete(DeleteBehavior.Restrict);
        model.Entity<Signature>().HasOne<Person>().WithMany().HasForeignKey(s => s.Person).OnDelete(DeleteBehavior.Restrict);
    }

    private static void Journal(ModelBuilder model)
    {
        model.Entity<ActRow>().HasKey(a => a.Number);
        model.Entity<ActRow>().Property(a => a.Number).ValueGeneratedNever();
        model.Entity<ActRow>().HasIndex(a => a.Key).IsUnique();
        model.Entity<ActRow>().HasIndex(a => new { a.Visit, a.Number });
        model.Entity<ChangeRow>().HasKey(c => new { c.Act, c.Ordinal });
        model.Entity<ChangeRow>().HasIndex(c => new { c.Item, c.Version });
        model.Entity<ChangeRow>().HasOne<ActRow>().WithMany().HasForeignKey(c => c.Act).OnDelete(DeleteBehavior.Restrict);
    }
}
