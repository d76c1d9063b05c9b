namespace Tickover.Web.Tests.Worksheets;

/// <summary>One app for all tests of a class that leave nothing behind which another would see.</summary>
public sealed class SharedApp : IAsyncLifetime
{
    private TestApp? _app;

    internal TestApp App => _app!;

    /// <inheritdoc/>
    public async ValueTask InitializeAsync() => _app = await TestApp.StartAsync();

    /// <inheritdoc/>
    public ValueTask DisposeAsync() => App.DisposeAsync();
}
