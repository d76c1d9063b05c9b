using Tickover.Workshop.Visits.Authorities;

namespace Tickover.Workshop.Visits.Cautions;

/// <summary>Cautions of petrol, tanks and the supply.</summary>
internal static class FuelCautions
{
    public static IReadOnlyList<Caution> All { get; } =
    [
        new()
        {
            Key = "draining",
            Stage = Stage.Storage,
            Step = "Draining petrol",
            First = "Put the tablet down outside the vapour zone",
            Why = "Draining starts more fires in this trade than any other act, and this tablet can light the vapour.",
            Conditions =
            [
                "Battery isolated, charger off, no fan that can start by itself.",
                "Outdoors or with the doors open, never over a pit or a drain; no flame, smoking or grinding in the building.",
                "Closed retriever; car and container bonded together before the first drop.",
                "Foam or powder extinguisher within reach, a second person in sight.",
                "Gloves and eye protection on; nothing eaten until hands are washed.",
                "Count the litres out of each tank: where only one empties, the cross-pipe may be blocked.",
            ],
            Topics = [HazardTopic.PetrolVapour, HazardTopic.Storage, HazardTopic.Waste],
            Tablet = TabletPlace.OutsideZone,
            EnterAfterwards = "litres out of each tank, how it looked and smelled, where it went",
        },
        new()
        {
            Key = "fuel-joint",
            Stage = Stage.Supply,
            Step = "Opening a fuel joint",
            First = "Isolate the battery, then put the tablet down outside the zone",
            Why = "A joint that looks empty lets go of a cupful onto whatever is below.",
            Conditions =
            [
                "Engine and exhaust cold, battery isolated.",
                "Pressure let down by the way the maker gives; tap shut or line clamped.",
                "Tray and absorbent under the joint, both ends capped at once.",
                "No lead lamp without a rating; torch with a rating only.",
                "New sealing washers to hand before the old ones are disturbed.",
            ],
            Topics = [HazardTopic.PetrolVapour, HazardTopic.HoseStandards],
            Tablet = TabletPlace.OutsideZone,
            EnterAfterwards = "which joint, what was renewed, and the leak check that is now due",
        },
        new()
        {
            Key = "tank-water",
            Stage = Stage.Storage,
            Step = "Leak test of a tank with water",
            First = "Prove that the tank is drained before water goes in",
            Why = "Petrol floats on the water and comes out of the neck first.",
            Conditions =
            [
                "Drained, flushed and its fumes led outdoors.",
                "Tank carried full by nobody: fill it where it stands; a litre weighs a kilogram.",
                "Dye in the water, dry paper under every seam, a day's stand.",
                "The water is contaminated afterwards and goes with the fuel waste.",
            ],
            Topics = [HazardTopic.PetrolVapour, HazardTopic.Waste],
            Tablet = TabletPlace.OutsideZone,
            EnterAfterwards = "litres, hours, what the paper showed",
        },
        new()
        {
            Key = "tank-air",
            Stage = Stage.Storage,
            Step = "Leak test of a tank with air",
            First = "Fit the relief valve or water column before the air line",
            Why = "A tank of thin steel at a pressure that seems small can burst or change shape.",
            Conditions =
            [
                "Water test preferred; air only with a regulator and a relief that cannot be shut.",
                "Never the shop's air line direct; stay at the lowest pressure that shows bubbles.",
                "Tank drained and flushed, vents blanked with caps made for it.",
                "Stand beside its edge, never in front of a flat side; eye protection on.",
                "A tank that holds pressure may still be thin: this test says nothing about the steel that is left.",
            ],
            Topics = [HazardTopic.Pressure, HazardTopic.PetrolVapour],
            Tablet = TabletPlace.OutsideZone,
            EnterAfterwards = "pressure, minutes, temperature, fall",
        },
        new()
        {
            Key = "de-rust",
            Stage = Stage.Storage,
            Step = "De-rusting a tank",
            First = "Open the doors before the current or the acid",
            Why = "Electrolysis gives off hydrogen and acids give off fumes and heat.",
            Conditions =
            [
                "Tank drained, flushed and dry first.",
                "Charger connected last and switched off first; no spark near the froth.",
                "Plain steel anode, never stainless.",
                "Goggles, gloves and apron; water to hand for splashes.",
                "Acid into water, never water into acid.",
                "Seal the bare steel with oil or fuel at once; spent liquor goes with the waste carrier.",
            ],
            Topics = [HazardTopic.Lead, HazardTopic.Waste, HazardTopic.PetrolVapour],
            Tablet = TabletPlace.OutsideZone,
            EnterAfterwards = "method, strength, hours, how the steel looked",
        },
        new()
        {
            Key = "hot-work",
            Stage = Stage.Storage,
            Step = "Heat, flame or welding on anything that held petrol",
            First = "Stop: this is never done here",
            Why = "A teaspoon of petrol left in a seam can burst a tank, however well it was washed.",
            Conditions =
            [
                "No welding, brazing, soldering, grinding or hot air on the tank, its neck or its pipes.",
                "Prefer a new tank or a repair without heat.",
                "Otherwise send it to a specialist who frees it of gas or fills it with inert gas, under a permit.",
                "Ask for the gas-free certificate and keep it with the visit.",
                "Carry it there capped, labelled and outside the cab.",
            ],
            Topics = [HazardTopic.HotWork, HazardTopic.PetrolVapour],
            Tablet = TabletPlace.OutsideZone,
            EnterAfterwards = "who has it, the permit and the certificate",
            NeverHere = true,
        },
        new()
        {
            Key = "sender",
            Stage = Stage.Gauge,
            Step = "Electrical test of a sender or gauge",
            First = "Close the tank before a meter touches the sender",
            Why = "A meter or a lamp across an open sender can spark where vapour lies.",
            Conditions =
            [
                "Battery isolated for every reading of ohms.",
                "Sender out of the tank and wiped dry, or tank closed and cap on.",
                "Feed test resistances at the gauge end, outside the zone.",
                "Never flash a wire to earth at the tank to see the needle move.",
            ],
            Topics = [HazardTopic.PetrolVapour, HazardTopic.Batteries],
            Tablet = TabletPlace.OutsideZone,
            EnterAfterwards = "ohms at each arm position, gauge position at each test value",
        },
        new()
        {
            Key = "pump-flow",
            Stage = Stage.Supply,
            Step = "Pump pressure and flow test",
            First = "Put a closed container and a second person in place before the pump turns",
            Why = "A hose that slips off at pressure sprays petrol over everyone and everything.",
            Conditions =
            [
                "Engine cold, extinguisher in the second person's hand.",
                "Hose clipped on the gauge and into a closed, bonded container.",
                "Pump fed through a switch that can be reached without leaning over the engine.",
                "Eye protection on; stop at the first drip.",
                "Tablet outside the zone: read the gauge, step out, then write.",
            ],
            Topics = [HazardTopic.PetrolVapour, HazardTopic.Pressure],
            Tablet = TabletPlace.OutsideZone,
            EnterAfterwards = "pressure, flow, voltage, how long it held",
        },
        new()
        {
            Key = "waste-fuel",
            Stage = Stage.Storage,
            Step = "Keeping and handing over waste fuel",
            First = "Label the container before it is filled",
            Why = "Old petrol with water, rust or lead in it is hazardous waste, and nobody can tell later what it was.",
            Conditions =
            [
                "Metal or approved container with a lid, bonded while it is filled, kept outdoors or in the store for it.",
                "Never into a drain, a waste-oil heater, or a car.",
                "Gloves: old residues may hold lead and benzene.",
                "Only to a carrier with a licence, against a note that you keep.",
            ],
            Topics = [HazardTopic.Waste, HazardTopic.Storage, HazardTopic.Lead],
            Tablet = TabletPlace.OutsideZone,
            EnterAfterwards = "litres, container, carrier and number of the note",
        },
    ];
}
