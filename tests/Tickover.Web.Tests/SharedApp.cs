[assembly: AssemblyFixture(typeof(Tickover.Web.Tests.SharedApp))]

namespace Tickover.Web.Tests;

/// <summary>One app, with the sample cars on its shelf, for all tests that only look; it is started by the first of them and ended after the last of all.</summary>
public sealed class SharedApp : IAsyncDisposable
{
    private static readonly Lazy<Task<TestApp>> App = new(() => TestApp.StartAsync("osprey-v8", "tern-2800", "gannet-1500", "faulty"));

    internal static Task<TestApp> Task => App.Value;

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (App.IsValueCreated)
        {
            await (await App.Value).DisposeAsync();
        }

        await BlankRecord.RemoveAsync();
    }
}
