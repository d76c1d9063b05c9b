using System.CommandLine;
using Tickover.Cli.Output;
using Tickover.Workshop.Cars;

namespace Tickover.Cli.Input;

/// <summary>The car a computation is asked for, on the day and with the fuel asked for.</summary>
/// <param name="terminal">Gives the standard input and the width of a list of faults.</param>
internal sealed class CarInput(Terminal terminal)
{
    private readonly Argument<string> _file = new("CAR") { Description = "The car document, or - for the standard input." };

    private readonly Option<string?> _ambient = new("--ambient")
    {
        Description = "Air of the day instead of the document's, such as \"30 °C, 1500 m, 40 %\".",
        HelpName = "AIR",
    };

    private readonly Option<string?> _fuel = new("--fuel") { Description = "Fuel grade instead of the document's, such as E10.", HelpName = "GRADE" };

    /// <summary>Adds the argument and the options to a command.</summary>
    /// <param name="command">The command.</param>
    public void AddTo(Command command)
    {
        command.Add(_file);
        command.Add(_ambient);
        command.Add(_fuel);
    }

    /// <summary>Reads the car.</summary>
    /// <param name="parsed">The command line.</param>
    /// <returns>The car, or all that is wrong.</returns>
    public Answer<Car> Read(ParseResult parsed)
    {
        var path = parsed.GetRequiredValue(_file);
        var text = CarFile.Read(path, terminal);
        if (!text.Good)
        {
            return Answer<Car>.No(text.Complaint);
        }

        var read = Judged(path, CarDocument.Read(text.Value));
        return read.Good ? OnTheDay(read.Value, parsed) : read;
    }

    /// <summary>Makes changes one after the other.</summary>
    /// <param name="car">The car.</param>
    /// <param name="changes">The changes.</param>
    /// <returns>The changed car, or all that is wrong with the first change that does not go.</returns>
    public Answer<Car> Change(Car car, IEnumerable<CarChange> changes)
    {
        Answer<Car> changed = car;
        foreach (var change in changes)
        {
            changed = Judged($"{change.Path}={change.Text}", CarDocument.Change(changed.Value!, change.Path, change.Text));
            if (!changed.Good)
            {
                return changed;
            }
        }

        return changed;
    }

    private Answer<Car> OnTheDay(Car car, ParseResult parsed)
    {
        var changes = new List<CarChange>();
        if (parsed.GetValue(_ambient) is { } air)
        {
            var read = AmbientText.Read(air, car.Ambient);
            if (!read.Good)
            {
                return Answer<Car>.No(read.Complaint);
            }

            changes.AddRange(read.Value);
        }

        if (parsed.GetValue(_fuel) is { } grade)
        {
            changes.Add(new CarChange("fuel", grade));
        }

        return Change(car, changes);
    }

    private Answer<Car> Judged(string name, CarReading reading) =>
        reading.Car ?? Answer<Car>.No($"{name} cannot be used:{Environment.NewLine}{FaultTable.Text(reading.Faults, terminal.Width)}");
}
