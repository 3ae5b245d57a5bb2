BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
    $layers = Get-LayerFile (Copy-Fixture ag-marks-and-locks (Join-Path $TestDrive 'hero.psd')) | Get-Layer
}

Describe 'Views' {
    It 'says <Expected> for the mark <Mark>' -ForEach @(
        @{ Mark = 0; Expected = '' }, @{ Mark = 4; Expected = 'green' }, @{ Mark = 7; Expected = 'gray' }, @{ Mark = 11; Expected = 'mark 11' }
    ) {
        [LayerTools.Views]::Describe([Enum]::ToObject([LayerTools.Model.Mark], $Mark)) | Should -BeExactly $Expected
    }

    It 'says <Expected> for the blend mode <Mode>' -ForEach @(
        @{ Mode = 'Normal'; Expected = 'normal' }, @{ Mode = 'ColorDodge'; Expected = 'color dodge' }, @{ Mode = 'PassThrough'; Expected = 'pass through' }
    ) {
        [LayerTools.Views]::Describe([LayerTools.Model.BlendMode] $Mode) | Should -BeExactly $Expected
    }

    It 'puts a name on one line' {
        [LayerTools.Views]::OneLine("a`nb`tc$([char] 27)[31m") | Should -Not -Match '[\x00-\x1f]'
        [LayerTools.Views]::OneLine($null) | Should -Be ''
    }

    It 'shows spaces at the ends of a name' {
        [LayerTools.Views]::OneLine(' Arm L  ') | Should -BeExactly '␣Arm L␣␣'
        [LayerTools.Views]::OneLine('  ') | Should -BeExactly '␣␣'
        [LayerTools.Views]::OneLine('Arm L') | Should -BeExactly 'Arm L'
    }

    It 'says what is unusual about a layer' {
        [LayerTools.Views]::DescribeState($layers[0]) | Should -Be 'clipped, 25 %, screen'
        [LayerTools.Views]::DescribeBounds($layers[0]) | Should -Be '5 x 10 at 21, 12'
        [LayerTools.Views]::DescribeMark($layers[1]) | Should -Be 'green'
    }

    It 'writes numbers the same under any culture' {
        $culture = [cultureinfo]::CurrentCulture
        try {
            [cultureinfo]::CurrentCulture = 'de-DE'
            [LayerTools.Views]::DescribePercent(62.5) | Should -Be '62.5 %'
            [LayerTools.Views]::DescribePercent($null) | Should -Be '-'
            [LayerTools.Views]::DescribeArea(1204500) | Should -Be '1 204 500'
        }
        finally { [cultureinfo]::CurrentCulture = $culture }
    }

    It 'shows the facts of <Type> that came back from another process' -ForEach @(
        @{ Type = 'a layer'; Make = { $layers[1] }; Expected = '*{0}*Green*' }
        @{ Type = 'a file'; Make = { $layers[1].GetFile() }; Expected = '*hero.psd*Rgb*' }
        @{ Type = 'a status'; Make = { Get-LayerStatus -InputObject $layers[1] }; Expected = '*{0}*Green*' }
    ) {
        $copy = [Management.Automation.PSSerializer]::Deserialize([Management.Automation.PSSerializer]::Serialize((& $Make)))
        $copy | Out-String -Width 200 | Should -BeLike ($Expected -f $layers[1].Name)
    }

    It 'counts in words' {
        [LayerTools.Views]::Count(1, 'layer') | Should -Be '1 layer'
        [LayerTools.Views]::Count(0, 'layer') | Should -Be '0 layers'
    }
}
