using CsCheck;
using FeltNest.Cost.Tickets;
using Xunit;
using static FeltNest.Tests.Cost.Tickets.TicketCases;

namespace FeltNest.Tests.Cost.Tickets;

/// <summary>Parts of each ticket add up, and each cause takes what is its own.</summary>
public sealed class TicketSplittingTests
{
    [Fact]
    public void A_perfect_ticket_has_no_part_of_any_cause()
    {
        TicketSplit split = TicketSplitting.Of(Ticket, null)!;

        Assert.Equal((500m, 45.6m, 45.6m), (split.Balls, split.StandardM2, split.ActualM2));
        Assert.All(split.Parts, part => Assert.Equal((0m, 0m), (part.M2, part.Money)));
    }

    // By hand. Two tickets on roll R1 of 50 m, both 100 strikes of 0.45 m2: 0.045 m2 a panel. The first: 20 panels of faults, 30 rejects,
    // 10 without a partner: 0.9, 1.35 and 0.45 m2. The second goes on from it: 31 m cut where 30 m of strikes are: 1 m x 1.5 m = 1.5 m2,
    // and of 1,000 panels 15 are told by nobody: 0.675 m2.
    [Fact]
    public void Two_tickets_on_one_roll_are_split_each_on_its_own()
    {
        CutTicket first = Ticket with
        {
            GoodPanels = 950,
            FaultPanels = 20,
            UnpairedPanels = 10,
            Rejects = new Dictionary<string, int> { ["edge"] = 10, ["hole"] = 20 },
        };
        CutTicket second =
            Ticket with { Number = 2, OverM = 0, LeadM = 0, CutM = 31, HasPlaces = true, GoodPanels = 985, UnpairedPanels = 1 };
        TicketSplit one = TicketSplitting.Of(first, null)!;
        TicketSplit two = TicketSplitting.Of(second, null)!;

        // 470 balls are allowed 940 x 0.045 + 0.6 = 42.9 m2; used are 30.4 m x 1.5 m = 45.6 m2.
        Assert.Equal((470m, 42.9m, 45.6m), (one.Balls, one.StandardM2, one.ActualM2));
        Assert.Equal(
            (0.9m, 1.35m, 0.45m, 0m),
            (M2(one, TicketCause.Faults), M2(one, TicketCause.Rejects), M2(one, TicketCause.Unpaired), M2(one, TicketCause.Rest)));
        Assert.Equal([new("hole", 0.9m), new("edge", 0.45m)], one.Reasons);

        // 492 balls: 984 x 0.045 = 44.28 m2; used are 46.5 m2. At 12 EUR/m2 the 2.22 m2 are 26.64 EUR.
        Assert.Equal((44.28m, 46.5m, 26.64m), (two.StandardM2, two.ActualM2, two.MoreMoney));
        Assert.Equal(
            (1.5m, 0.045m, 0.675m), (M2(two, TicketCause.Feed), M2(two, TicketCause.Unpaired), M2(two, TicketCause.Rest)));
    }

    // A roll 2 mm under the width of the layout that cut every panel lost nothing to it; one row of ten off is a tenth of the panels.
    [Fact]
    public void The_count_decides_whether_width_took_a_row()
    {
        TicketSplit whole = TicketSplitting.Of(Ticket with { WidthMm = 1498, InvoicedWidthMm = 1498 }, null)!;
        TicketSplit guessed = TicketSplitting.Of(Ticket with { WidthMm = 1498, InvoicedWidthMm = 1498, GoodPanels = 900 }, null)!;
        TicketSplit counted = TicketSplitting.Of(Ticket with { Rows = 9, GoodPanels = 900 }, null)!;

        Assert.Equal(-0.0608m, M2(whole, TicketCause.Width));
        Assert.Equal(4.5m - 0.0608m, M2(guessed, TicketCause.Width));
        Assert.Equal((4.5m, 0m), (M2(counted, TicketCause.Width), M2(counted, TicketCause.Rest)));
    }

    // Invoiced 1,520 mm and 51 m where 1,500 mm and 50 m are: 30.4 m x 1.02 x 1.52 m = 47.13216 m2 are paid for 45.6 m2.
    [Fact]
    public void What_was_invoiced_and_is_not_there_is_a_cause_of_its_own()
    {
        TicketSplit split = TicketSplitting.Of(Ticket with { InvoicedWidthMm = 1520, InvoicedShare = 1.02m }, null)!;

        Assert.Equal(1.53216m, M2(split, TicketCause.Invoiced));
        Assert.Equal(1.53216m, split.MoreM2);
    }

    // A standard of 1 m lost at the ends of any roll: the same piece of 30.4 m is allowed 0.608 m on 50 m and 0.304 m on 100 m. Its rates
    // 2, 1 and 0.5 % ask for 1000 / (0.98 x 0.99 x 0.995) panels.
    [Fact]
    public void Roll_ends_are_allowed_for_the_length_of_the_roll()
    {
        TicketSplit shorter = TicketSplitting.Of(Ticket, Standard)!;
        TicketSplit longer = TicketSplitting.Of(Ticket with { RollLengthM = 100 }, Standard)!;

        Assert.Equal((1, (0.4m - 0.608m) * 1.5m), (shorter.StandardVersion, M2(shorter, TicketCause.RollEnds)));
        Assert.Equal((0.4m - 0.304m) * 1.5m, M2(longer, TicketCause.RollEnds));
        Assert.Equal((1000 / (0.98m * 0.99m * 0.995m) * 0.045m) + 0.912m, shorter.StandardM2, 8);
    }

    [Fact]
    public void Blanks_are_told_and_taken_at_the_standard()
    {
        TicketSplit split = TicketSplitting.Of(
            Ticket with { GoodPanels = null, Rejects = null, FaultPanels = null, UnpairedPanels = null, WidthMm = null }, Standard)!;

        Assert.Equal(["good panels", "faults", "rejects", "panels without a partner", "width"], split.NotCounted);
        Assert.Equal((0m, 0m, 0m), (M2(split, TicketCause.Faults), M2(split, TicketCause.Rejects), M2(split, TicketCause.Unpaired)));
        Assert.InRange(M2(split, TicketCause.Rest), -1e-7m, 1e-7m);
        Assert.Null(TicketSplitting.Of(Ticket with { Strikes = null }, null));
    }

    [Fact]
    public void The_parts_of_any_ticket_add_up_to_the_last_digit() => Tickets.Sample(ticket =>
    {
        foreach (TicketStandard? standard in (TicketStandard?[])[null, Standard])
        {
            if (TicketSplitting.Of(ticket, standard) is { } split)
            {
                Assert.Equal(split.MoreM2, split.Parts.Sum(p => p.M2));
                Assert.Equal(split.MoreMoney, split.Parts.Sum(p => p.Money));

                // Where every panel is told, nothing is left for nobody.
                decimal told = ticket.GoodPanels!.Value + ticket.FaultPanels!.Value + ticket.RejectedPanels!.Value;
                Assert.Equal((split.StruckPanels - told) * 0.045m, M2(split, TicketCause.Rest), 7);
            }
        }
    });

    // 1,000 panels of 45 m2 struck, and ten rows where the layout has nine: more rows than planned take no felt away.
    [Fact]
    public void More_rows_than_the_layout_has_are_no_loss() => Assert.Equal(
        0, M2(TicketSplitting.Of(Ticket with { LayoutRows = 9, Rows = 10 }, null)!, TicketCause.Width));

    // 18 EUR a metre of 1.5 m: 12 EUR a square metre. A promise of 12 USD says nothing about felt paid in EUR.
    [Fact]
    public void A_price_promised_in_another_currency_is_not_taken()
    {
        CutTicket ticket = Ticket with { PricePerMetre = 36 };

        Assert.Equal(12 * 45.6m, Priced("EUR") - Extra());
        Assert.Equal(24 * 45.6m, Priced("USD") - (2 * Extra()));

        decimal Priced(string currency) => TicketSplitting.Of(ticket, Standard with { Currency = currency })!.StandardMoney;

        // What the standard allows beyond the 45.6 m2 of the ticket, at 12 EUR.
        decimal Extra() => 12 * (TicketSplitting.Of(ticket, Standard)!.StandardM2 - 45.6m);
    }

    [Fact]
    public void A_ticket_without_a_whole_pair_has_no_part_in_the_sum() => Assert.Null(
        TicketSplitting.Of(Ticket with { GoodPanels = 5, UnpairedPanels = 5 }, null));

    private static readonly Gen<CutTicket> Tickets =
        from strikes in Gen.Int[1, 200]
        from lost in Gen.Int[0, 9]
        from fault in Gen.Int[0, 9]
        from alone in Gen.Int[0, 3]
        from cut in Gen.Int[1, 90_000]
        from width in Gen.Int[1500, 1540]
        from invoiced in Gen.Int[1480, 1540]
        from share in Gen.Int[900, 1100]
        select Ticket with
        {
            Strikes = strikes,
            GoodPanels = (10 * strikes) - lost - fault,
            Rejects = new Dictionary<string, int> { ["edge"] = lost },
            FaultPanels = fault / 2,
            UnpairedPanels = Math.Min(alone, 1),
            CutM = cut / 1000m,
            HasPlaces = true,
            WidthMm = width,
            InvoicedWidthMm = invoiced,
            InvoicedShare = share / 1000m,
        };
}
