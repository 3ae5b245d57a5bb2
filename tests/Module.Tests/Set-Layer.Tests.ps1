BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
    $ErrorActionPreference = 'Continue'
}

Describe 'Set-Layer' {
    BeforeEach {
        $path = Copy-Fixture groups-nested (Join-Path $TestDrive 'hero.psd')
        $file = Get-LayerFile $path
    }

    It 'sets mark, visibility and opacity of chosen layers, and passes the file on' {
        $out = $file | Set-Layer -Name Head -Kind Pixel -Mark Green -Visible $false -Opacity 50
        [object]::ReferenceEquals($out, $file) | Should -BeTrue
        $head = $file | Get-Layer -LayerNumber 7
        "$($head.Mark) $($head.Visible) $($head.Opacity)" | Should -Be 'Green False 50.2'
        $file.Changes | ForEach-Object { "$($_.LayerNumber) $($_.Property) $($_.Old) $($_.New)" } | Should -Be '7 Mark None Green', '7 Visible True False', '7 Opacity 100 50.2'
    }

    It 'lives through a save' {
        $file | Set-Layer -Name Body -Mark Violet -Opacity 40 -Visible $false | Save-LayerFile -InPlace > $null
        $body = Get-Layer $path -Name Body
        "$($body.Mark) $($body.Visible) $($body.Opacity)" | Should -Be 'Violet False 40'
    }

    It 'takes layers and passes them on in the order they came' {
        $layers = $file | Get-Layer -Leaf | Sort-Object LayerNumber -Descending
        $out = $layers | Set-Layer -Mark Blue
        $out.LayerNumber | Should -Be 8, 7, 6, 3
        ($file | Get-Layer -Mark Blue).LayerNumber | Should -Be 3, 6, 7, 8
    }

    It 'shows old and new with -WhatIf, changes nothing and passes its input on' {
        ($file | Set-Layer -Name Body -Mark Green -WhatIf).PendingCount | Should -Be 0
        ($file | Get-Layer -Name Body | Set-Layer -Mark Green -WhatIf).Mark | Should -Be 'None'
    }

    It 'needs something to set, in range' {
        { $file | Set-Layer } | Should -Throw '*-Mark, -Visible or -Opacity*'
        { $file | Set-Layer -Opacity 101 } | Should -Throw
        { $file | Set-Layer -Mark Pink } | Should -Throw
    }

    It 'counts what already is as asked for as no edit' {
        ($file | Set-Layer -Name Body -Visible $true).PendingCount | Should -Be 0
    }
}
