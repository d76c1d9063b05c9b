using Tickover.Records.Tests.Opening;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Tests;

/// <summary>PINs: set, tried, and shut after wrong tries (OWASP ASVS 5.0, V6.3 General Authentication Security).</summary>
public sealed class PinBookTests : IAsyncLifetime
{
    private readonly SetClock _clock = new(new DateTimeOffset(2026, 11, 25, 9, 0, 0, TimeSpan.Zero));
    private readonly Id<Person> _ruth = Id.New<Person>();
    private RecordStore _store = null!;
    private PinBook _pins = null!;

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        _store = await Opened.OpenAsync(Opened.NewPlace(), clock: _clock);
        _pins = new PinBook(_store);
        Assert.Null(await _pins.SetAsync(_ruth, "2468", null, Cancellation));
    }

    public ValueTask DisposeAsync()
    {
        _store.Dispose();
        return ValueTask.CompletedTask;
    }

    [Theory]
    [InlineData("")]
    [InlineData("123")]
    [InlineData("123456789")]
    [InlineData("12 34")]
    [InlineData("12ab")]
    [InlineData("١٢٣٤")]
    public async Task A_PIN_is_four_to_eight_digits(string pin) =>
        Assert.Contains("four to eight digits", await _pins.SetAsync(Id.New<Person>(), pin, null, Cancellation), StringComparison.Ordinal);

    [Fact]
    public async Task A_PIN_is_changed_only_by_who_knows_the_old_one()
    {
        Assert.NotNull(await _pins.SetAsync(_ruth, "1357", null, Cancellation));
        Assert.NotNull(await _pins.SetAsync(_ruth, "1357", "0000", Cancellation));
        Assert.Null(await _pins.TryAsync(_ruth, "2468", Cancellation));
        Assert.Null(await _pins.SetAsync(_ruth, "1357", "2468", Cancellation));
        Assert.Null(await _pins.TryAsync(_ruth, "1357", Cancellation));
        Assert.NotNull(await _pins.TryAsync(_ruth, "2468", Cancellation));
    }

    [Fact]
    public async Task Two_who_set_the_first_PIN_at_once_do_not_overwrite_each_other()
    {
        var person = Id.New<Person>();

        var answers = await Task.WhenAll(Enumerable.Range(0, 4).Select(k => Task.Run(() => _pins.SetAsync(person, $"100{k}", null, Cancellation), Cancellation)));

        var won = Array.FindIndex(answers, a => a is null);
        Assert.Single(answers, a => a is null);
        Assert.Null(await _pins.TryAsync(person, $"100{won}", Cancellation));
    }

    [Fact]
    public async Task Whoever_has_none_is_told()
    {
        Assert.False(await _pins.HasPinAsync(Id.New<Person>(), Cancellation));
        Assert.Contains("no PIN yet", await _pins.TryAsync(Id.New<Person>(), "2468", Cancellation), StringComparison.Ordinal);
    }

    [Fact]
    public async Task After_five_wrong_ones_each_further_one_shuts_for_longer()
    {
        await WrongAsync(5);
        var waits = new List<TimeSpan>();
        for (var k = 0; k < 8; k++)
        {
            waits.Add(await ShutForAsync());
            Assert.Contains("Wait until", await _pins.TryAsync(_ruth, "2468", Cancellation), StringComparison.Ordinal);
            _clock.Now += waits[^1];
            Assert.Contains("is wrong", await _pins.TryAsync(_ruth, "0000", Cancellation), StringComparison.Ordinal);
        }

        Assert.Equal([1.0, 2, 4, 8, 16, 32, 60, 60], waits.Select(w => w.TotalMinutes));
    }

    [Fact]
    public async Task The_right_one_after_the_wait_opens_and_begins_the_count_anew()
    {
        await WrongAsync(5);
        _clock.Now += TimeSpan.FromMinutes(1);

        Assert.Null(await _pins.TryAsync(_ruth, "2468", Cancellation));
        await WrongAsync(4);
        Assert.Null(await _pins.TryAsync(_ruth, "2468", Cancellation));
    }

    [Fact]
    public async Task A_clock_set_back_shuts_nobody_out_for_longer_than_the_longest_wait()
    {
        await WrongAsync(5);
        _clock.Now -= TimeSpan.FromDays(400);

        Assert.Null(await _pins.TryAsync(_ruth, "2468", Cancellation));
    }

    [Fact]
    public async Task A_new_PIN_does_not_get_round_the_wait()
    {
        await WrongAsync(5);

        Assert.Contains("Wait until", await _pins.SetAsync(_ruth, "1357", "2468", Cancellation), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_kept_of_a_PIN_does_not_hold_it()
    {
        var row = await _store.ReadAsync(context => Task.FromResult(context.Pins.Single()));

        Assert.Equal((16, 32, 600_000), (row.Salt.Length, row.Hash.Length, row.Iterations));
        Assert.Equal(-1, row.Hash.AsSpan().IndexOf("2468"u8));
        Assert.Empty(await _store.JournalAsync(null, 10, Cancellation));
    }

    private async Task WrongAsync(int times)
    {
        for (var k = 0; k < times; k++)
        {
            Assert.Contains("is wrong", await _pins.TryAsync(_ruth, "0000", Cancellation), StringComparison.Ordinal);
        }
    }

    private Task<TimeSpan> ShutForAsync() => _store.ReadAsync(context => Task.FromResult(context.Pins.Single(p => p.Person == _ruth.Value).ShutUntil!.Value - _clock.Now));
}
