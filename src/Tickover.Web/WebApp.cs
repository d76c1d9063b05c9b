namespace Tickover.Web;

/// <summary>The tablet app and the HTTP API.</summary>
public static class WebApp
{
    /// <summary>Puts the app together; the caller starts it.</summary>
    /// <param name="args">Settings of the host as on a command line; usually none.</param>
    /// <param name="options">Folders and address.</param>
    /// <returns>The app, not yet started.</returns>
    public static WebApplication Build(string[] args, WebAppOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        var builder = WebApplication.CreateBuilder(args);
        builder.WebHost.UseUrls(options.Address);
        return builder.Build();
    }
}
