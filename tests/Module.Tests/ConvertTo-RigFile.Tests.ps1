BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
    $ErrorActionPreference = 'Continue'
}

Describe 'ConvertTo-RigFile' {
    BeforeEach {
        $path = Copy-Fixture clipping-run (Join-Path $TestDrive 'hero.psd')
        $file = Get-LayerFile $path
    }

    It 'passes the file on, so that it can be saved' {
        $ready = Join-Path $TestDrive "ready-$([guid]::NewGuid()).psd"
        $file | ConvertTo-RigFile -AcceptDifference -Keep '*' | Save-LayerFile -Destination $ready
        $layers = Get-Layer $ready
        $layers.Clipped | Should -Not -Contain $true
        $layers.HasMask | Should -Not -Contain $true
        @($layers).Count | Should -BeLessThan @(Get-Layer $path).Count
    }

    It 'makes clipped layers parts of their own' {
        $before = @($file | Get-Layer).Count
        @($file | ConvertTo-RigFile -Clipping Cut -AcceptDifference -Keep '*' | Get-Layer).Count | Should -Be ($before - 1) -Because 'the shade lies wholly outside of the arm it is clipped to'
        ($file | Get-Layer).Clipped | Should -Not -Contain $true
    }

    It 'reports what became of each layer' {
        $before = @($file | Get-Layer).Count
        $report = $file | ConvertTo-RigFile -Report -AcceptDifference -Keep '*'
        $report.Count | Should -Be $before
        $report.Outcome | Should -Contain 'Merged'
        $report | Out-String -Width 160 | Should -Match 'Outcome'
        $file.PendingCount | Should -BeGreaterThan 0
    }

    It 'shows with -WhatIf what would be baked, and changes nothing' {
        $result = $file | ConvertTo-RigFile -WhatIf -AcceptDifference -Keep '*'
        $result | Should -Be $file
        $file.PendingCount | Should -Be 0
        ($file | Get-Layer).Clipped | Should -Contain $true
    }

    It 'leaves out what is named' {
        $plain = Get-LayerFile (Copy-Fixture groups-nested (Join-Path $TestDrive 'groups.psd'))
        ($plain | ConvertTo-RigFile -Drop 'Arm*' | Get-Layer).Name | Should -Be 'Figure', 'Head', 'Eye L', 'Eye L', 'Head', 'Body'
    }

    It 'turns 16 and 32 bits and grey to RGB with 8' -ForEach @(
        @{ Fixture = 'grey-16' }
        @{ Fixture = 'rgb-16' }
        @{ Fixture = 'grey-8' }
        @{ Fixture = 'rgb-32' }
    ) {
        $ready = Join-Path $TestDrive "$Fixture-ready.psd"
        Get-LayerFile (Copy-Fixture $Fixture (Join-Path $TestDrive "$Fixture.psd")) | ConvertTo-RigFile -Keep '*' -AcceptDifference | Save-LayerFile -Destination $ready
        $saved = Get-LayerFile $ready
        "$($saved.ColorMode) $($saved.BitDepth)" | Should -Be 'Rgb 8'
    }

    It 'refuses a file of which nothing would be left, and goes on with the next' {
        $plain = Get-LayerFile (Copy-Fixture groups-nested (Join-Path $TestDrive 'groups.psd'))
        $result = Get-Streams { $file, $plain | ConvertTo-RigFile -Drop 'Eye R', 'Body', 'Head', 'Arm L', 'Shade' -Keep 'Figure/*' }
        $result.Errors[0].FullyQualifiedErrorId | Should -BeLike 'EditRefused*'
        $file.PendingCount | Should -Be 0
        $result.Output | Should -Contain $plain
    }

    It 'lists parts that are painted in several places' {
        $islands = $file | ConvertTo-RigFile -Islands
        $islands | Where-Object Count -LT 2 | Should -BeNullOrEmpty
        $file.PendingCount | Should -Be 0
    }

    It 'does not take -Islands together with what bakes' {
        { $file | ConvertTo-RigFile -Islands -Clipping Cut } | Should -Throw '*Parameter set*'
    }
}
