using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;

namespace LayerTools.Tests.Model;

public class OppositesTests
{
    [Fact]
    public void Find_looks_in_the_same_group()
    {
        var file = File(Group("Face", Pixel("Eye L"), Pixel("eye r"), Pixel("Nose")), Pixel("Ear L"));
        var opposites = new Opposites(file);

        Assert.Equal("Face/eye r", opposites.Find(file.Find("Face/Eye L"))?.LayerPath);
        Assert.Equal("Face/Eye L", opposites.Find(file.Find("Face/eye r"))?.LayerPath);
        Assert.Null(opposites.Find(file.Find("Face/Nose")));
        Assert.Null(opposites.Find(file.Find("Ear L")));
    }

    [Fact]
    public void Find_looks_in_the_opposite_group_and_prefers_it()
    {
        var file = File(Group("Arm L", Pixel("Hand L"), Pixel("Hand R")), Group("Arm R", Pixel("Hand R")));

        Assert.Same(file.Find("Arm R/Hand R"), new Opposites(file).Find(file.Find("Arm L/Hand L")));
    }

    [Fact]
    public void Find_does_not_look_in_other_groups()
    {
        var file = File(Group("Upper", Pixel("Lid L")), Group("Lower", Pixel("Lid R")));

        Assert.Null(new Opposites(file).Find(file.Find("Upper/Lid L")));
    }

    [Fact]
    public void Find_keeps_a_slash_in_a_name_apart_from_a_group()
    {
        var file = File(Pixel("Arm/Hand L"), Group("Arm", Pixel("Hand R")));

        Assert.Null(new Opposites(file).Find(file.Find("Arm\\/Hand L")));
    }

    [Fact]
    public void Find_pairs_layers_of_one_name_in_stack_order()
    {
        var file = File(Pixel("Hair L"), Pixel("Hair L"), Pixel("Hair L"), Pixel("Hair R"), Pixel("Hair R"));
        var opposites = new Opposites(file);

        Assert.Equal([4, 5, 5], file.GetLayers().Take(3).Select(layer => opposites.Find(layer)?.LayerNumber));
    }

    [Fact]
    public void FindAcross_looks_in_the_opposite_group_for_layers_whose_own_name_says_no_side()
    {
        var file = File(Group("Arm L", Group("Hand", Pixel("Thumb")), Pixel("Sleeve")), Group("Arm R", Group("Hand", Pixel("Thumb"))), Pixel("Nose"));
        var opposites = new Opposites(file);

        Assert.Same(file.Find("Arm R/Hand/Thumb"), opposites.FindAcross(file.Find("Arm L/Hand/Thumb")));
        Assert.Same(file.Find("Arm L/Hand"), opposites.FindAcross(file.Find("Arm R/Hand")));
        Assert.Same(file.Find("Arm R"), opposites.FindAcross(file.Find("Arm L")));
        Assert.Null(opposites.FindAcross(file.Find("Arm L/Sleeve")));
        Assert.Null(opposites.FindAcross(file.Find("Nose")));
        Assert.Null(opposites.Find(file.Find("Arm L/Hand")));
    }

    [Fact]
    public void Find_knows_other_ways_to_write_the_side_and_to_join_words()
    {
        var file = File(
            Pixel("Leg L"), Pixel("leg_R"), Pixel("boot_shine_L"), Pixel("右 boot shine"), Group("Arm L", Pixel("LeftHand")), Group("arm(R)", Pixel("hand.R")),
            Pixel("Ear L"), Pixel("ear_R"), Pixel("Ear R"));
        var opposites = new Opposites(file);

        Assert.Equal("leg_R", opposites.Find(file.Find("Leg L"))?.Name);
        Assert.Equal("Leg L", opposites.Find(file.Find("leg_R"))?.Name);
        Assert.Equal("右 boot shine", opposites.Find(file.Find("boot_shine_L"))?.Name);
        Assert.Equal("arm(R)/hand.R", opposites.Find(file.Find("Arm L/LeftHand"))?.LayerPath);
        Assert.Equal("Ear R", opposites.Find(file.Find("Ear L"))?.Name);
        Assert.Equal("Ear L", opposites.Find(file.Find("ear_R"))?.Name);
    }
}
