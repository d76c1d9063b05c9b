using Tickover.Web.Visits;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Authorities;

namespace Tickover.Web.Papers;

/// <summary>Reads the particulars of the workshop that are asked for at the beginning and can be changed later.</summary>
internal static class HouseFields
{
    private const int CurrencyLength = 3;

    /// <summary>The house as the form has it.</summary>
    public static House Read(FormFields fields, House house)
    {
        var country = fields.Text("country");
        if (!AuthorityCatalogue.Countries.Contains(country, StringComparer.Ordinal))
        {
            fields.Complain("country", "Choose a country from the list.");
        }

        var currency = fields.Text("currency").ToUpperInvariant();
        if (currency.Length != CurrencyLength || !currency.All(char.IsAsciiLetterUpper))
        {
            fields.Complain("currency", "Write the money as three letters, such as GBP, EUR or USD (ISO 4217).");
        }

        return house with
        {
            Id = House.TheOne,
            Name = fields.Needed("name", "The workshop needs a name: it stands at the head of every account."),
            Address = fields.Text("address"),
            Country = country,
            Units = fields.Choice("units", UnitChoice.Metric),
            Words = fields.Choice("words", TradeWords.British),
            Paper = fields.Choice("paper", PaperSize.A4),
            Currency = currency,
        };
    }
}
