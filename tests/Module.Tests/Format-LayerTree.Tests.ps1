BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
    $ErrorActionPreference = 'Continue'
    $path = Copy-Fixture groups-nested (Join-Path $TestDrive 'hero.psd')
}

Describe 'Format-LayerTree' {
    It 'writes the tree as aligned text' {
        Get-LayerFile $path | Format-LayerTree | Should -Be @(
            'hero.psd | 32 x 32 px | RGB, 8 bit | centre line x = 16 | 8 layers'
            'No  Layer        Kind   Side  Size     Mark  State'
            ' 1  Figure/      group        17 x 24'
            ' 2    Arm L/     group  left  5 x 10         hidden'
            ' 3      Arm L    pixel  left  5 x 10         in hidden group'
            ' 4    Head/      group        14 x 12'
            ' 5      Eye L/   group  left  3 x 3'
            ' 6        Eye L  pixel  left  3 x 3'
            ' 7      Head     pixel        14 x 12'
            ' 8    Body       pixel        12 x 14'
        )
    }

    It 'tells marks and everything unusual in words' {
        $lines = Get-LayerFile (Copy-Fixture ag-marks-and-locks (Join-Path $TestDrive 'marked.psd')) | Format-LayerTree
        $lines[2] | Should -Match 'Arm L\s+pixel\s+left\s+5 x 10\s+red\s+clipped, 25 %, screen$'
        $lines[3] | Should -Match 'Head\s+pixel\s+14 x 12\s+green\s+locked$'
    }

    It 'keeps columns straight under wide signs' {
        $lines = Get-LayerFile (Copy-Fixture names-japanese (Join-Path $TestDrive 'wide.psd')) | Format-LayerTree
        $lines | Should -Contain ' 3  右腕   pixel  right  5 x 10'
        $lines | Should -Contain ' 1  ﾏｳｽ    pixel         3 x 3'
    }

    It 'keeps odd names on one line each' {
        $file = Get-LayerFile (Copy-Fixture names-empty-and-spaces (Join-Path $TestDrive 'odd.psd'))
        ($file | Format-LayerTree).Count | Should -Be ($file.LayerCount + 2)
        $file | Format-LayerTree | Should -Contain ' 2  Head␊back  pixel        14 x 12'
    }

    It 'shows chosen layers, and how many there are' {
        $lines = Get-LayerFile $path | Format-LayerTree -Name 'Eye*'
        $lines.Count | Should -Be 5
        $lines[-1] | Should -Be '2 of 8 layers shown'
        (Get-Layer $path -Side Left | Format-LayerTree)[-1] | Should -Be '4 of 8 layers shown'
    }

    It 'shows each file with pending edits, an empty line between' {
        $other = Copy-Fixture ag-plain (Join-Path $TestDrive 'other.psd')
        $lines = Get-LayerFile $path, $other | Set-Layer -LayerNumber 1 -Mark Blue | Format-LayerTree
        $lines[0] | Should -BeLike 'hero.psd*| 1 edit not saved yet'
        @($lines) -eq '' | Should -HaveCount 1
        $lines -like 'other.psd*' | Should -HaveCount 1
    }

    It 'writes no colour into text that is piped on or kept' {
        (Get-LayerFile $path | Set-Layer -LayerNumber 1 -Mark Red | Format-LayerTree | Out-String) | Should -Not -Match "`e"
    }

    It 'refuses a path, and says what to begin with' {
        $result = Get-Streams { $path | Format-LayerTree }
        $result.Errors[0].FullyQualifiedErrorId | Should -BeLike 'NotALayer,*'
        $result.Errors[0] | Should -BeLike '*Begin with Get-LayerFile*'
    }
}
