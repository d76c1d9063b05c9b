using Tickover.Records;
using Tickover.Records.Opening;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Visits;

/// <summary>Opens the workshop's record for the pages.</summary>
internal static class OpenRecord
{
    /// <summary>Opens it, or begins one in a folder that never had one.</summary>
    public static Task<RecordStore> OpenAsync(WebAppOptions options) =>
        RecordOpening.OpenAsync(new RecordPlace(Path.GetFullPath(options.DataFolder), options.Database), Beginning.Allowed, options.Clock);

    /// <summary>Makes the record known to pages and end points.</summary>
    public static void AddRecord(this IServiceCollection services, RecordStore store, WebAppOptions options)
    {
        if (options.DailyBackups && store.Place.IsFile)
        {
            services.AddHostedService<DailyBackups>();
        }

        services.AddSingleton(store);
        services.AddSingleton<IRecord>(store);
        services.AddSingleton<ICarShelf>(new RecordShelf(store));
        services.AddSingleton<IPictures>(new PictureBook(store));
        services.AddSingleton<IPins>(new PinBook(store));
        services.AddScoped<VisitDesk>();
    }
}
